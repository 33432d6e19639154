package evenfall.report.html;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.place.Place;
import evenfall.ingest.words.Words;
import evenfall.report.deciding.Rules;
import evenfall.report.form.Form;
import evenfall.report.heed.PastPain;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.weeks.HeightCount;
import evenfall.report.words.Days;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;

/** What stands first on a session's page: who and when, how sound the recording is, what was worst, what to heed. */
final class FirstWords {

    private static final Words WORDS = Words.beside(FirstWords.class);

    /** So many landings are named by their numbers. */
    private static final int NAMED = 4;

    private FirstWords() {}

    /** What was wrong with the landing that passed the most limits; empty where none did. */
    static String worst(List<SessionLanding> landings) {
        return MostPassed.of(landings)
                .filter(event -> !MostPassed.limits(event).isEmpty())
                .map(event -> WORDS.say(
                        "worst",
                        Integer.toString(event.landing().index()),
                        LandingViews.height(event),
                        LandingViews.form(event),
                        String.join("; ", MostPassed.limits(event))))
                .orElse("");
    }

    /** Of the recording, and in which landings a measure is missing all the same. */
    static String health(Session session, List<SessionLanding> landings) {
        String health = MethodWords.health(session.analysis().findings());
        List<String> partly = landings.stream()
                .filter(event -> event.verdict() != null && event.verdict().partial())
                .map(event -> Integer.toString(event.landing().index()))
                .toList();
        return partly.isEmpty()
                ? health
                : health + " "
                        + (partly.size() <= NAMED
                                ? WORDS.say("health.partly", partly.size(), String.join(", ", partly))
                                : WORDS.say("health.partly.many", partly.size()));
    }

    static String pain(Session session, Background background) {
        String pain = DiaryWords.pain(session.diary());
        PastPain past = background.pastPain();
        return past == null
                ? pain
                : pain + " " + WORDS.say("pain.past", Days.words(past.day()), String.join(", ", past.regions()));
    }

    static String title(Session session) {
        return session.athlete() == null
                ? WORDS.say("title.files", String.join(", ", session.sources()))
                : WORDS.say(
                        "title.session",
                        session.athlete(),
                        session.date() == null ? "" : SessionDate.words(session.date()));
    }

    static String worn(Session session, Background background) {
        boolean both = session.analysis().clock() != null
                || session.analysis().mounting().containsKey(Place.UPPER_BACK);
        String worn = WORDS.say(both ? "worn.both" : "worn.pelvis");
        String asOf = background.asOf();
        return asOf == null ? worn : worn + " " + WORDS.say("as.of", asOf);
    }

    static List<String> urgent(Session session) {
        List<String> cautions = new ArrayList<>(session.standing().sentences());
        cautions.addAll(DiaryWords.cautions(session.diary()));
        for (SessionLanding event : session.landings()) {
            if (event.landing().kind() == EventKind.FALL) {
                cautions.add(WORDS.say(
                        "caution.fall", Figures.clock(event.landing().moments().contactS())));
            }
        }
        return cautions;
    }

    static List<String> standing(Session session, List<SessionLanding> landings, Background background) {
        List<String> cautions = new ArrayList<>();
        long lost = landings.stream()
                .filter(event -> event.verdict() != null
                        && event.verdict().form() == Form.LOST
                        && !event.note().leftOut())
                .count();
        if (lost > 0) {
            Double share = background.heldShare();
            HeightCount held = HeightViews.heldUpTo(session, share == null ? Rules.STARTING.heldShare() : share);
            cautions.add(
                    held == null
                            ? WORDS.say("caution.lost", lost)
                            : WORDS.say(
                                    "caution.lost.height",
                                    lost,
                                    Figures.height(held.heightM()),
                                    held.held(),
                                    held.all()));
        }
        cautions.add(WORDS.say("caution.always"));
        cautions.add(WORDS.say("caution.place"));
        return cautions;
    }
}

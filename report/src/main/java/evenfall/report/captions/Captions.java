package evenfall.report.captions;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.ingest.words.Words;
import evenfall.report.film.FilmClock;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A session as a caption track in the WebVTT form (W3C): one caption a landing, from contact on, with its number, height,
 * form and what spoke against it. Landings that would stand in the film before its beginning are left out.
 */
public final class Captions {

    private static final Words WORDS = Words.beside(Captions.class);

    /** As long as two lines take to read: common practice, no source. */
    private static final double SHOWN_S = 4;

    private static final int MOST_REASONS = 2;

    private Captions() {}

    /**
     * Writes the track.
     *
     * @param clock the film's clock
     */
    public static void write(Session session, FilmClock clock, Appendable out) throws IOException {
        out.append("WEBVTT\n\nNOTE ").append(escaped(WORDS.say("note"))).append("\n");
        List<SessionLanding> landings = session.landings().stream()
                .filter(event -> event.landing().kind() != EventKind.STEPS)
                .filter(event -> clock.filmS(contactS(event)) >= 0)
                .toList();
        for (int k = 0; k < landings.size(); k++) {
            SessionLanding event = landings.get(k);
            double from = clock.filmS(contactS(event));
            double to = from + SHOWN_S;
            if (k + 1 < landings.size()) {
                to = Math.min(to, clock.filmS(contactS(landings.get(k + 1))));
            }
            out.append("\n").append(Integer.toString(event.landing().index())).append("\n");
            out.append(time(from))
                    .append(" --> ")
                    .append(time(Math.max(to, from + 0.001)))
                    .append("\n");
            for (String line : lines(event)) {
                out.append(escaped(line)).append("\n");
            }
        }
    }

    /** {@code hh:mm:ss.ttt} of a time that is not negative, s. */
    static String time(double seconds) {
        long milliseconds = Math.round(seconds * 1000);
        long whole = milliseconds / 1000;
        return String.format(
                Locale.ROOT, "%02d:%02d:%02d.%03d", whole / 3600, whole / 60 % 60, whole % 60, milliseconds % 1000);
    }

    /** Text as a caption may hold it: on one line, with nothing that a player takes for markup or for times. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static double contactS(SessionLanding event) {
        return event.landing().moments().contactS();
    }

    private static List<String> lines(SessionLanding event) {
        Landing landing = event.landing();
        if (landing.kind() == EventKind.FALL) {
            return List.of(WORDS.say("fall"));
        }
        List<String> lines = new ArrayList<>();
        Double height = event.heightM();
        FormVerdict verdict = event.verdict();
        Form form = verdict == null ? null : verdict.form();
        String title = height == null
                ? WORDS.say("landing", landing.index())
                : WORDS.say("landing.from", landing.index(), Figures.height(height));
        lines.add(form == null ? title : WORDS.say("landing.form", title, WORDS.say("form." + form.code())));
        if (verdict != null) {
            verdict.reasons().stream()
                    .filter(Reason::over)
                    .limit(MOST_REASONS)
                    .map(Reason::text)
                    .forEach(lines::add);
        }
        if (event.note().leftOut()) {
            lines.add(WORDS.say("leftOut"));
        }
        return lines;
    }
}

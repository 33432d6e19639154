package evenfall.report.sentence;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A session in one breath: how many landings from which heights, how often form held, and what gave way most, such as
 * "18 landings from 0.4 to 1.2 m. Form held in 12. Above 0.9 m the trunk leaned right in 5 of 6."
 *
 * <p>A description of what was, never a permission. Landings the coach left out count only as left out.
 */
public final class SessionSentence {

    private static final Words WORDS = Words.beside(SessionSentence.class);

    private SessionSentence() {}

    /** The sentences, each ended by a full stop. */
    public static String of(Session session) {
        List<SessionLanding> all = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .toList();
        List<SessionLanding> counted =
                all.stream().filter(event -> !event.note().leftOut()).toList();
        List<String> parts = new ArrayList<>();
        parts.add(howMany(counted));
        if (!counted.isEmpty()) {
            parts.add(form(counted));
            parts.addAll(GivingWay.words(WORDS, counted));
        }
        if (counted.size() < all.size()) {
            parts.add(WORDS.say("leftOut", all.size() - counted.size()));
        }
        long falls = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.FALL)
                .count();
        if (falls > 0) {
            parts.add(WORDS.say("falls", falls));
        }
        return String.join(" ", parts);
    }

    /** A noted height as it is; a measured one to a tenth of a metre, which is what it is worth in a sentence. */
    private static @Nullable Double told(SessionLanding event) {
        Double height = event.heightM();
        if (height == null || event.note().heightM() != null) {
            return height;
        }
        return Math.round(height * 10) / 10.0;
    }

    private static String howMany(List<SessionLanding> counted) {
        if (counted.isEmpty()) {
            return WORDS.say("landings");
        }
        List<Double> heights = counted.stream()
                .map(SessionSentence::told)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        if (heights.isEmpty()) {
            return WORDS.say("landings.noHeight", counted.size());
        }
        String low = Figures.height(heights.get(0));
        String high = Figures.height(heights.get(heights.size() - 1));
        return low.equals(high)
                ? WORDS.say("landings.at", counted.size(), low)
                : WORDS.say("landings.between", counted.size(), low, high);
    }

    private static String form(List<SessionLanding> counted) {
        int judged = 0;
        int held = 0;
        for (SessionLanding event : counted) {
            FormVerdict verdict = event.verdict();
            if (verdict != null && verdict.form() != null) {
                judged++;
                held += verdict.form() == Form.HELD ? 1 : 0;
            }
        }
        if (judged == 0) {
            return WORDS.say("form.none");
        }
        if (judged < counted.size()) {
            return WORDS.say("form.some.of", held, judged);
        }
        if (judged == 1) {
            return WORDS.say(held == 1 ? "form.one.held" : "form.one.not");
        }
        if (held == judged) {
            return WORDS.say("form.all", held);
        }
        return held == 0 ? WORDS.say("form.no", judged) : WORDS.say("form.some", held);
    }
}

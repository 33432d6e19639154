package evenfall.report.round;

import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.LandingRemark;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;

/** One landing as a coach reads it between two jumps: large words first, the rest below. */
final class LandingWords {

    private static final Words WORDS = Words.beside(LandingWords.class);

    private LandingWords() {}

    /** A few words: what was worst, or that form held. */
    static String headline(SessionLanding landing) {
        FormVerdict verdict = landing.verdict();
        Measures measures = landing.landing().measures();
        if (verdict == null || verdict.form() == null || measures == null) {
            return WORDS.say("landing.unjudged");
        }
        for (Reason reason : verdict.reasons()) {
            Double value = MeasureList.named(reason.measure())
                    .map(measure -> measure.of(measures))
                    .orElse(null);
            if (reason.over() && value != null) {
                return LandingRemark.brief(reason.measure(), value)
                        .map(words -> WORDS.say("landing.fault", words))
                        .orElse(WORDS.say("form." + verdict.form().code()));
            }
        }
        return WORDS.say("form." + verdict.form().code());
    }

    /** Which landing, from where, onto what, and how it was held. */
    static String second(int number, SessionLanding landing) {
        List<String> parts = new ArrayList<>();
        parts.add(WORDS.say("landing.number", number));
        Side side = landing.side();
        if (side != null) {
            parts.add(WORDS.say("foot." + side.code()));
        }
        Double height = landing.heightM();
        if (height != null) {
            parts.add(WORDS.say("height", Figures.height(height)));
        }
        Form form = landing.form();
        if (form != null) {
            parts.add(WORDS.say("form." + form.code() + ".word"));
        }
        return String.join(", ", parts) + ".";
    }

    /** All reasons, each a clause with its value and limit. */
    static List<String> reasons(SessionLanding landing) {
        FormVerdict verdict = landing.verdict();
        return verdict == null
                ? List.of()
                : verdict.reasons().stream().map(Reason::text).toList();
    }

    static LandingMark mark(SessionLanding landing) {
        return new LandingMark(
                landing.landing().moments().contactS(), landing.heightM(), landing.side(), landing.form());
    }
}

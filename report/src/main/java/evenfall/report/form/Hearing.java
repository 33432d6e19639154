package evenfall.report.form;

import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Hears the measures of one landing one after another and comes to a verdict. */
final class Hearing {

    private static final Words WORDS = Words.beside(Hearing.class);

    private record Heard(Reason reason, double excess) {}

    private final @Nullable Side side;
    private final Set<FormQuestion> judged = EnumSet.noneOf(FormQuestion.class);
    private final Set<FormQuestion> failed = EnumSet.noneOf(FormQuestion.class);
    private final List<Heard> heard = new ArrayList<>();
    private boolean partial;
    private @Nullable PeakForHeight peak;

    /**
     * A hearing.
     *
     * @param side the foot or feet landed on, or null if not known
     */
    Hearing(@Nullable Side side) {
        this.side = side;
    }

    /**
     * Hears one measure.
     *
     * @param stored its value with the sign results have, or null if missing
     * @param sigma one standard deviation of its error, or null if exact or not known
     * @param limit between what it may lie
     */
    void hear(Judged measure, @Nullable Double stored, @Nullable Double sigma, Limit limit) {
        if (stored == null || !Double.isFinite(stored)) {
            partial = true;
            return;
        }
        double value = Footing.turned(measure.turning(), stored, side);
        double beyond = limit.beyond(value);
        double size = limit.size(value);
        boolean onEdge = sigma != null && sigma > 0 && Math.abs(beyond) <= sigma;
        boolean usualButPastStart =
                beyond <= 0 && limit.looserThanStart(value) && measure.way().size(value) > limit.starting();
        rule(measure.question(), beyond > 0);
        if (beyond > 0 || onEdge || usualButPastStart) {
            OwnUsual own = limit.usual();
            String usual =
                    own == null ? "" : FormWords.brief(measure, Footing.turned(measure.turning(), own.median(), side));
            String limits = WORDS.say(
                    usualButPastStart
                            ? "by.own.past.start"
                            : "by." + limit.source().code(),
                    FormWords.limit(measure, size),
                    usual,
                    FormWords.limit(measure, limit.starting()));
            tell(
                    measure,
                    FormWords.of(measure, stored),
                    limits,
                    beyond > 0,
                    onEdge,
                    beyond / Math.max(size, Double.MIN_NORMAL));
        }
    }

    /** Hears how hard the landing was against what is usual at its height. */
    void hearPeak(Impact impact, double sigma, UsualImpact usual, double limit, @Nullable Double heightM) {
        double beyond = impact.peakG() - limit;
        peak = new PeakForHeight(
                usual.peakG(),
                limit,
                Math.log(impact.peakG() / usual.peakG()) / usual.spread(),
                impact.clipped(),
                usual.landings());
        if (impact.clipped() && beyond <= 0) {
            // It was at least so hard: nobody knows whether it was harder than usual.
            partial = true;
            return;
        }
        boolean onEdge = !impact.clipped() && sigma > 0 && Math.abs(beyond) <= sigma;
        rule(Judged.PEAK.question(), beyond > 0);
        if (beyond > 0 || onEdge) {
            tell(
                    Judged.PEAK,
                    WORDS.say(impact.clipped() ? "peak.at.least" : "peak", FormWords.g(impact.peakG())),
                    WORDS.say("by.height", FormWords.g(limit), FormWords.g(usual.peakG()), FormWords.metres(heightM)),
                    beyond > 0,
                    onEdge,
                    beyond / limit);
        }
    }

    private void rule(FormQuestion question, boolean over) {
        judged.add(question);
        if (over) {
            failed.add(question);
        }
    }

    private void tell(Judged measure, String what, String limits, boolean over, boolean onEdge, double excess) {
        String edge = onEdge ? WORDS.say(over ? "edge.over" : "edge.within") : "";
        String text = WORDS.say("reason", what, limits, edge);
        heard.add(new Heard(new Reason(measure.question(), measure.measure().name(), text, over, onEdge), excess));
    }

    FormVerdict verdict() {
        List<Reason> reasons = heard.stream()
                .sorted(Comparator.comparingDouble(Heard::excess).reversed())
                .map(Heard::reason)
                .toList();
        if (judged.isEmpty()) {
            return new FormVerdict(null, reasons, true, peak);
        }
        Form form = failed.isEmpty() ? Form.HELD : failed.size() == 1 ? Form.STRAINED : Form.LOST;
        return new FormVerdict(form, reasons, partial, peak);
    }
}

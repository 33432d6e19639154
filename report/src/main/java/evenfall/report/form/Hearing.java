package evenfall.report.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Hears the measures of one landing one after another and comes to a verdict. */
final class Hearing {

    private record Heard(Reason reason, double excess) {}

    private final Set<FormQuestion> judged = EnumSet.noneOf(FormQuestion.class);
    private final Set<FormQuestion> failed = EnumSet.noneOf(FormQuestion.class);
    private final List<Heard> heard = new ArrayList<>();
    private boolean partial;

    /**
     * Hears one measure.
     *
     * @param value its size in the direction that is a fault, or null if missing
     * @param limit the largest size that is no fault
     * @param sigma one standard deviation of its error, or null if exact or not known
     * @param words the measure with its side and value, asked for only when it matters
     * @param limitWords the limit with its unit
     */
    void hear(
            FormQuestion question,
            String measure,
            @Nullable Double value,
            double limit,
            @Nullable Double sigma,
            Supplier<String> words,
            String limitWords) {
        if (value == null || !Double.isFinite(value)) {
            partial = true;
            return;
        }
        judged.add(question);
        boolean over = value > limit;
        boolean onEdge = sigma != null && sigma > 0 && Math.abs(value - limit) <= sigma;
        if (over) {
            failed.add(question);
        }
        if (over || onEdge) {
            String edge = onEdge ? (over ? "; only just over, on the edge" : "; not over, but on the edge") : "";
            String text = words.get() + " (limit " + limitWords + edge + ")";
            double excess = (value - limit) / Math.max(limit, Double.MIN_NORMAL);
            heard.add(new Heard(new Reason(question, measure, text, over, onEdge), excess));
        }
    }

    FormVerdict verdict() {
        List<Reason> reasons = heard.stream()
                .sorted(Comparator.comparingDouble(Heard::excess).reversed())
                .map(Heard::reason)
                .toList();
        if (judged.isEmpty()) {
            return new FormVerdict(null, reasons, true);
        }
        Form form = failed.isEmpty() ? Form.HELD : failed.size() == 1 ? Form.STRAINED : Form.LOST;
        return new FormVerdict(form, reasons, partial);
    }
}

package evenfall.report.block;

import evenfall.report.form.Form;
import evenfall.report.statistics.FallingChance;
import evenfall.report.statistics.Interval;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the drop height at which form was held half of the time; {@code strained} and {@code lost} both count as not held. */
final class FormHeightFinder {

    private static final int LEAST = 12;
    private static final String METHOD = "logistic curve of held against drop height (Firth 1993), interval by profile"
            + " likelihood, widened where sessions differ; never beyond the heights tried";

    private FormHeightFinder() {}

    /** The landings that have both a height and a form; heights are the noted ones where any is noted. */
    static List<BlockLanding> judged(List<BlockLanding> counted) {
        boolean noted = noted(counted);
        return counted.stream()
                .filter(landing -> landing.form() != null && height(landing, noted) != null)
                .toList();
    }

    /** Their heights, m. */
    static double[] heights(List<BlockLanding> counted, List<BlockLanding> judged) {
        boolean noted = noted(counted);
        return judged.stream()
                .map(landing -> height(landing, noted))
                .mapToDouble(height -> height == null ? 0 : height)
                .toArray();
    }

    private static boolean noted(List<BlockLanding> counted) {
        return counted.stream().anyMatch(landing -> landing.heightM() != null);
    }

    /** Over the counted landings of a block, or of one session. */
    static FormHeight find(List<BlockLanding> counted) {
        List<BlockLanding> judged = judged(counted);
        int n = judged.size();
        if (n == 0) {
            return none(n, "No landing has both a drop height and a form.");
        }
        double[] heights = heights(counted, judged);
        boolean[] held = new boolean[n];
        int count = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            held[i] = judged.get(i).form() == Form.HELD;
            count += held[i] ? 1 : 0;
            lowest = Math.min(lowest, heights[i]);
            highest = Math.max(highest, heights[i]);
        }
        if (n < LEAST) {
            return none(n, "Fewer than " + LEAST + " landings have a drop height and a form.");
        }
        if (count == n) {
            return none(n, say("Form was held in every landing, up to %.2f m.", highest));
        }
        if (count == 0) {
            return none(n, say("Form was held in no landing, from %.2f m on.", lowest));
        }
        if (highest - lowest < 2 * HeightModel.EQUAL_M) {
            return none(n, say("All landings were from one height, %.2f m.", highest));
        }
        BySession by = new BySession(judged);
        FallingChance fit = new FallingChance(heights, held, by.session(), by.sessions());
        double half = fit.half();
        if (!fit.falls()) {
            return none(n, "Form was not held less often from higher up, so no height stands out.");
        }
        Interval interval = fit.interval();
        if (half > highest) {
            return new FormHeight(
                    null,
                    interval.low(),
                    null,
                    n,
                    METHOD,
                    say("Held more often than not up to the highest drop, %.2f m.", highest));
        }
        if (half < lowest) {
            return new FormHeight(
                    null,
                    null,
                    interval.high(),
                    n,
                    METHOD,
                    say("Held less often than not even from the lowest drop, %.2f m.", lowest));
        }
        return new FormHeight(half, interval.low(), interval.high(), n, METHOD, null);
    }

    private static FormHeight none(int n, String why) {
        return new FormHeight(null, null, null, n, null, why);
    }

    private static String say(String words, double height) {
        return String.format(Locale.ROOT, words, height);
    }

    private static @Nullable Double height(BlockLanding landing, boolean noted) {
        return noted ? landing.heightM() : landing.values().get("dropHeightM");
    }
}

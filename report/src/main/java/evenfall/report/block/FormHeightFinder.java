package evenfall.report.block;

import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.statistics.FallingChance;
import evenfall.report.statistics.Interval;
import evenfall.report.words.Figures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the drop height at which form was held half of the time; {@code strained} and {@code lost} both count as not held. */
final class FormHeightFinder {

    private static final Words WORDS = Words.beside(FormHeightFinder.class);

    private static final int LEAST = 12;
    private static final String METHOD = WORDS.say("height.method");

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
            return none(n, WORDS.say("height.none"));
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
            return none(n, WORDS.say("height.few", String.valueOf(LEAST)));
        }
        if (count == n) {
            return none(n, say("height.always", highest));
        }
        if (count == 0) {
            return none(n, say("height.never", lowest));
        }
        if (highest - lowest < 2 * HeightModel.EQUAL_M) {
            return none(n, say("height.one", highest));
        }
        BySession by = new BySession(judged);
        FallingChance fit = new FallingChance(heights, held, by.session(), by.sessions());
        double half = fit.half();
        if (!fit.falls()) {
            return none(n, WORDS.say("height.flat"));
        }
        Interval interval = fit.interval();
        if (half > highest) {
            return new FormHeight(null, interval.low(), null, n, METHOD, say("height.above", highest));
        }
        if (half < lowest) {
            return new FormHeight(null, null, interval.high(), n, METHOD, say("height.below", lowest));
        }
        return new FormHeight(half, interval.low(), interval.high(), n, METHOD, null);
    }

    private static FormHeight none(int n, String why) {
        return new FormHeight(null, null, null, n, null, why);
    }

    private static String say(String key, double height) {
        return WORDS.say(key, Figures.fixed(height, 2));
    }

    private static @Nullable Double height(BlockLanding landing, boolean noted) {
        return noted ? landing.heightM() : landing.values().get("dropHeightM");
    }
}

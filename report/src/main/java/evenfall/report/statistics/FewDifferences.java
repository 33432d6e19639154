package evenfall.report.statistics;

import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * What a few differences (one a session) say without a normal distribution: the exact test that turns their signs (Fisher 1935,
 * The Design of Experiments, section 21) and the middle of their averages (Hodges and Lehmann 1963, Ann. Math. Stat. 34:598).
 */
public final class FewDifferences {

    /** Up to here all ways to turn signs are counted; beyond, so many are drawn, the same each time. */
    private static final int COUNTED = 16;

    private static final int DRAWN = 19_999;
    private static final long SEED = 20260302;

    /** Sums that differ by less than this share are the same but for rounding. */
    private static final double SAME = 1e-9;

    private FewDifferences() {}

    /** Of all ways to turn the signs, the share whose mean lies at least as far from zero; null without a difference. */
    public static @Nullable Double signFlipChance(double[] differences) {
        int n = differences.length;
        if (n == 0) {
            return null;
        }
        double sum = 0;
        double size = 0;
        for (double difference : differences) {
            sum += difference;
            size += Math.abs(difference);
        }
        double least = Math.abs(sum) - SAME * size;
        return n <= COUNTED ? counted(differences, least) : drawn(differences, least);
    }

    private static double counted(double[] differences, double least) {
        int ways = 1 << differences.length;
        int asFar = 0;
        for (int way = 0; way < ways; way++) {
            double sum = 0;
            for (int i = 0; i < differences.length; i++) {
                sum += (way >> i & 1) == 0 ? differences[i] : -differences[i];
            }
            asFar += Math.abs(sum) >= least ? 1 : 0;
        }
        return (double) asFar / ways;
    }

    private static double drawn(double[] differences, double least) {
        SplittableRandom random = new SplittableRandom(SEED);
        int asFar = 1;
        for (int draw = 0; draw < DRAWN; draw++) {
            double sum = 0;
            long signs = 0;
            for (int i = 0; i < differences.length; i++) {
                signs = i % Long.SIZE == 0 ? random.nextLong() : signs >>> 1;
                sum += (signs & 1) == 0 ? differences[i] : -differences[i];
            }
            asFar += Math.abs(sum) >= least ? 1 : 0;
        }
        return asFar / (DRAWN + 1.0);
    }

    /** The median of the averages of any two of at least one value, each with itself too. */
    public static double hodgesLehmann(double[] values) {
        int n = values.length;
        double[] averages = new double[n * (n + 1) / 2];
        int at = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                averages[at++] = (values[i] + values[j]) / 2;
            }
        }
        return Medians.of(averages);
    }
}

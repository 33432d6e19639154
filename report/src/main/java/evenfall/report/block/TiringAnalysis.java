package evenfall.report.block;

import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Jackknife;
import evenfall.report.statistics.Medians;
import evenfall.report.statistics.StudentT;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What drifts within a session: how landings of one day, one height and one foot differ by their number. Each such group has a
 * level of its own, so that neither what a day does nor a ladder of boxes, however height acts, passes for tiring.
 */
final class TiringAnalysis {

    private static final int SESSIONS = 4;

    /** Beyond so many robust spreads a landing is wild: common practice, no source. */
    private static final double FAR = 3;

    /** Noted heights are as good as equal within this, m. */
    private static final double SAME_M = 0.02;

    private final Tiring tiring;
    private final double p;

    /**
     * Analyses one measure.
     *
     * @param landings counted landings that have a value
     * @param heights whether any height is noted
     * @param cutOff whether a landing's value may be larger
     * @param mdc95 smallest change that is more than the typical error explains, or null if not known
     */
    TiringAnalysis(
            List<BlockLanding> landings,
            boolean heights,
            ToDoubleFunction<BlockLanding> value,
            Predicate<BlockLanding> cutOff,
            @Nullable Double mdc95) {
        if (!heights) {
            this.tiring = Tiring.untold(
                    Trend.NO_CLEAR_CHANGE,
                    "No drop heights are noted: boxes that rise within a session could pass for tiring.");
            this.p = 1;
            return;
        }
        List<BlockLanding> used =
                landings.stream().filter(landing -> landing.heightM() != null).toList();
        BySession by = new BySession(used);
        double[] number = used.stream().mapToDouble(BlockLanding::number).toArray();
        int[] group = groups(used);
        double[] own = centred(group, number);
        if (Arrays.stream(by.split(own)).filter(TiringAnalysis::varies).count() < SESSIONS) {
            this.tiring = Tiring.untold(
                    Trend.TOO_FEW,
                    "Tiring is looked for from four sessions on that have landings from the same height on the same foot.");
            this.p = 1;
            return;
        }
        if (CutOff.share(used, cutOff) > CutOff.MOST) {
            this.tiring =
                    Tiring.untold(Trend.NO_CLEAR_CHANGE, "More than a tenth of the values were cut off at full scale.");
            this.p = 1;
            return;
        }
        double[] values =
                tamed(own, centred(group, used.stream().mapToDouble(value).toArray()), group);
        StudentT said = slope(by, own, values);
        double slope = said.estimate();
        Interval interval = said.interval();
        double span = Medians.of(spans(by, number));
        boolean clear = mdc95 != null && interval.clearOfZero() && Math.abs(slope) * span > mdc95;
        this.tiring = new Tiring(
                slope,
                interval,
                slope * span,
                (int) Math.round(span) + 1,
                !clear ? Trend.NO_CLEAR_CHANGE : slope > 0 ? Trend.RISING : Trend.FALLING,
                null);
        this.p = said.chance();
    }

    Tiring tiring() {
        return tiring;
    }

    /** How often chance alone would give a drift as steep. */
    double p() {
        return p;
    }

    /** From the first to the last landing of each session. */
    private static double[] spans(BySession by, double[] number) {
        return Arrays.stream(by.split(number))
                .mapToDouble(numbers -> Arrays.stream(numbers).max().orElse(0)
                        - Arrays.stream(numbers).min().orElse(0))
                .toArray();
    }

    /** Least squares of all sessions, and its error by leaving out one session after another. */
    private static StudentT slope(BySession by, double[] number, double[] value) {
        double[][] numbers = by.split(number);
        double[][] values = by.split(value);
        double[] products = new double[numbers.length];
        double[] squares = new double[numbers.length];
        int told = 0;
        for (int s = 0; s < numbers.length; s++) {
            for (int i = 0; i < numbers[s].length; i++) {
                products[s] += numbers[s][i] * values[s][i];
                squares[s] += numbers[s][i] * numbers[s][i];
            }
            told += squares[s] > 0 ? 1 : 0;
        }
        double product = Arrays.stream(products).sum();
        double square = Arrays.stream(squares).sum();
        double[] without = new double[told];
        int at = 0;
        for (int s = 0; s < numbers.length; s++) {
            if (squares[s] > 0) {
                without[at++] = (product - products[s]) / (square - squares[s]);
            }
        }
        return new StudentT(product / square, Jackknife.error(without), told - 1);
    }

    /** Values of which those far from the rest are brought nearer, so that no wild landing decides. */
    private static double[] tamed(double[] number, double[] value, int[] group) {
        double slope = middleSlope(number, value);
        double[] left = new double[value.length];
        double[] counted = new double[value.length];
        int n = 0;
        for (int i = 0; i < value.length; i++) {
            left[i] = value[i] - slope * number[i];
            if (number[i] != 0) {
                counted[n++] = left[i];
            }
        }
        double reach = FAR * Medians.spread(Arrays.copyOf(counted, n), 0);
        double[] tamed = new double[value.length];
        for (int i = 0; i < value.length; i++) {
            tamed[i] = slope * number[i] + Math.max(-reach, Math.min(reach, left[i]));
        }
        return centred(group, tamed);
    }

    /** The median of how each landing differs from its group, by one of its number. */
    private static double middleSlope(double[] number, double[] value) {
        double[] slopes = new double[value.length];
        int n = 0;
        for (int i = 0; i < value.length; i++) {
            if (Math.abs(number[i]) > 0) {
                slopes[n++] = value[i] / number[i];
            }
        }
        return Medians.of(Arrays.copyOf(slopes, n));
    }

    private static boolean varies(double[] values) {
        return Arrays.stream(values).anyMatch(value -> Math.abs(value) > 0);
    }

    /** The number of each landing's group: landings of one day, one height and one foot. */
    private static int[] groups(List<BlockLanding> landings) {
        Map<String, Integer> numbers = new HashMap<>();
        int[] group = new int[landings.size()];
        for (int i = 0; i < group.length; i++) {
            BlockLanding landing = landings.get(i);
            long step = Math.round(Objects.requireNonNull(landing.heightM()) / SAME_M);
            String name = landing.date() + " " + step + " " + landing.side();
            group[i] = numbers.computeIfAbsent(name, key -> numbers.size());
        }
        return group;
    }

    /** Each value less the mean of its group. */
    private static double[] centred(int[] group, double[] values) {
        double[] sum = new double[values.length];
        int[] count = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            sum[group[i]] += values[i];
            count[group[i]]++;
        }
        double[] centred = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            centred[i] = values[i] - sum[group[i]] / count[group[i]];
        }
        return centred;
    }
}

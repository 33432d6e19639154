package evenfall.report.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * A chance that falls along a quantity as a logistic curve, and where it is one half.
 *
 * <p>The likelihood carries Jeffreys' prior (Firth 1993, Biometrika 80:27), which keeps the curve finite where hits and
 * misses do not overlap. The interval is that of the profile likelihood. Where sessions differ more than chance would have
 * it, the likelihood is flattened by the ratio of the variance with the session as the unit (Liang and Zeger 1986) to that
 * of the curve, and its limit is Student's for that many sessions.
 */
public final class FallingChance {

    private static final double CONFIDENCE = 0.95;

    /** Steepest curve looked for: from nine in ten to one in ten within a hundredth of the range tried. */
    private static final double STEEPEST = 440;

    private static final double FLATTEST = 1e-3;
    private static final int EVALUATIONS = 500;
    /** Products are kept below, so that they stay finite. */
    private static final double LARGE = 1e300;

    /** Halvings of the range, to less than a hundredth of a millimetre of a metre. */
    private static final int HALVINGS = 17;

    private final double[] at;
    private final boolean[] hit;
    private final double from;
    private final double range;
    private final double half;
    private final double steepness;
    private final double best;
    private final double limit;

    /**
     * Fits.
     *
     * @param at the quantity, with at least two different values
     * @param hit whether it was so there; at least one hit and one miss
     * @param session number of each value's session
     * @param sessions how many there are
     */
    public FallingChance(double[] at, boolean[] hit, int[] session, int sessions) {
        this.hit = hit.clone();
        this.from = Arrays.stream(at).min().orElseThrow();
        this.range = Arrays.stream(at).max().orElseThrow() - from;
        this.at = Arrays.stream(at).map(h -> (h - from) / range).toArray();
        double[] ones = new double[at.length];
        Arrays.fill(ones, 1);
        double[] curve = LogisticFit.of(new double[][] {ones, this.at}, hit);
        // A curve that does not fall has no height at which it is one half on the way down.
        this.steepness = Math.max(FLATTEST, Math.min(STEEPEST, -curve[1]));
        this.half = curve[0] / steepness;
        this.best = likelihood(half, steepness);
        this.limit = limit(session, sessions);
    }

    /** Where the chance is one half, in the quantity's own unit; may lie outside what was tried. */
    public double half() {
        return from + range * half;
    }

    /** Whether the chance falls at all: false where the flattest curve fits best. */
    public boolean falls() {
        return steepness > 2 * FLATTEST;
    }

    /** The 95 % interval of {@link #half}, cut off at the range tried. */
    public Interval interval() {
        double middle = Math.max(0, Math.min(1, half));
        double low = inside(0) ? 0 : edge(0, middle);
        double high = inside(1) ? 1 : edge(1, middle);
        return new Interval(from + range * low, from + range * high);
    }

    private boolean inside(double c) {
        return 2 * (best - profile(c)) <= limit;
    }

    /** Between an end outside the interval and the middle inside it. */
    private double edge(double outside, double within) {
        double out = outside;
        double in = within;
        for (int k = 0; k < HALVINGS; k++) {
            double c = (out + in) / 2;
            if (inside(c)) {
                in = c;
            } else {
                out = c;
            }
        }
        return in;
    }

    /** The largest penalised log-likelihood of curves that are one half at {@code c}. */
    private double profile(double c) {
        return new BrentOptimizer(1e-5, 1e-7)
                .optimize(
                        new MaxEval(EVALUATIONS),
                        new UnivariateObjectiveFunction(log -> likelihood(c, Math.exp(log))),
                        GoalType.MAXIMIZE,
                        new SearchInterval(Math.log(FLATTEST), Math.log(STEEPEST)))
                .getValue();
    }

    private double likelihood(double c, double steep) {
        double sum = 0;
        double i00 = 0;
        double i01 = 0;
        double i11 = 0;
        double product = 1;
        for (int i = 0; i < at.length; i++) {
            double e = steep * (c - at[i]);
            // exp(-|e|) is safe for large e, and 1 + that lies from 1 to 2: one logarithm does for many.
            double u = Math.exp(-Math.abs(e));
            sum += hit[i] ? Math.min(0, e) : Math.min(0, -e);
            product *= 1 + u;
            if (product > LARGE) {
                sum -= Math.log(product);
                product = 1;
            }
            double w = u / ((1 + u) * (1 + u));
            i00 += w;
            i01 += w * at[i];
            i11 += w * at[i] * at[i];
        }
        return sum - Math.log(product) + 0.5 * Math.log(Math.max(Double.MIN_NORMAL, i00 * i11 - i01 * i01));
    }

    private double limit(int[] session, int sessions) {
        double plain = new ChiSquaredDistribution(null, 1).inverseCumulativeProbability(CONFIDENCE);
        double i00 = 0;
        double i01 = 0;
        double i11 = 0;
        double[][] score = new double[sessions][2];
        for (int i = 0; i < at.length; i++) {
            double p = 1 / (1 + Math.exp(-steepness * (half - at[i])));
            double w = p * (1 - p);
            i00 += w;
            i01 += w * at[i];
            i11 += w * at[i] * at[i];
            double miss = (hit[i] ? 1 : 0) - p;
            score[session[i]][0] += miss;
            score[session[i]][1] += miss * at[i];
        }
        double det = i00 * i11 - i01 * i01;
        if (sessions < 2 || !(det > 0)) {
            return plain;
        }
        // The curve is 1 / (1 + exp(-(a + b x))): half = -a / b, b = -steepness.
        double b = -steepness;
        double da = -1 / b;
        double db = half * -1 / b;
        double ga = (i11 * da - i01 * db) / det;
        double gb = (-i01 * da + i00 * db) / det;
        double curve = da * ga + db * gb;
        double bySession = 0;
        for (double[] s : score) {
            double one = s[0] * ga + s[1] * gb;
            bySession += one * one;
        }
        bySession *= sessions / (sessions - 1.0);
        if (!(bySession > curve)) {
            return plain;
        }
        double t = StudentT.reach(Math.max(2, sessions - 1));
        return t * t * bySession / curve;
    }
}

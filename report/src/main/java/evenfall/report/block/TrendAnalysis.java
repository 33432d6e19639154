package evenfall.report.block;

import evenfall.ingest.words.Words;
import evenfall.report.log.SessionDate;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.StudentT;
import evenfall.report.statistics.TheilSen;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.jspecify.annotations.Nullable;

/**
 * How a measure moves over the weeks: the median of the slopes between session medians, brought to equal height and foot
 * where heights are noted.
 *
 * <p>What height does is found within sessions; not knowing it exactly widens the interval where sessions differ in height.
 * Where each day has one height of its own and the days differ, height and weeks are told apart, as far as they can be, by
 * regression of the medians on both.
 */
final class TrendAnalysis {

    private static final Words WORDS = Words.beside(TrendAnalysis.class);

    private static final int SESSIONS_FOR_TREND = 4;
    private static final int SESSIONS_FOR_ERROR = 3;
    private static final int SESSIONS_FOR_BOTH = 5;
    /** Heights that the weeks explain to more than this cannot be told from the weeks. */
    private static final double ALIKE = 0.95;

    /** 1.96 √2: two measurements, each with the typical error, 95 % (Hopkins 2000, Sports Med 30:1). */
    static final double MDC_FACTOR = 1.96 * Math.sqrt(2);

    private static final String PLAIN = WORDS.say("trend.method");
    private static final String EQUAL = WORDS.say("trend.method.height");
    private static final String TOGETHER = WORDS.say("trend.method.together");
    private static final String NOT_APART = WORDS.say("trend.apart");

    private static final String HIDDEN = WORDS.say("trend.hidden");

    private final Trend trend;
    private final List<SessionDate> dates;
    private final double[] medians;
    private final @Nullable WithinDay withinDay;
    private final @Nullable Double typicalError;
    private final double p;

    /**
     * Analyses one measure.
     *
     * @param landings counted landings that have a value, at least one
     * @param heights whether sessions are to be compared at equal height; landings without one then do not count
     * @param cutOff whether a landing's value may be larger
     */
    TrendAnalysis(
            List<BlockLanding> landings,
            boolean heights,
            ToDoubleFunction<BlockLanding> value,
            Predicate<BlockLanding> cutOff) {
        List<BlockLanding> used = heights
                ? landings.stream().filter(landing -> landing.heightM() != null).toList()
                : landings;
        BySession by = new BySession(used);
        double[] values = used.stream().mapToDouble(value).toArray();
        HeightModel model = heights ? HeightModel.of(used, by.session(), by.sessions(), values) : null;
        double[] equal = model == null ? values : model.atEqualHeightAndFoot();
        this.dates = by.dates();
        this.medians = by.medians(equal);
        this.withinDay = WithinDay.of(by.split(equal));
        boolean hidden = false;
        for (double[] session : by.split(CutOff.raised(used, equal, cutOff))) {
            hidden |= CutOff.hides(session);
        }
        this.typicalError = typicalError(medians);
        if (by.sessions() < SESSIONS_FOR_TREND) {
            this.trend = tooFew(WORDS.say("trend.few"));
            this.p = 1;
            return;
        }
        double[] weeks = by.weeks();
        if (weeks[weeks.length - 1] == 0) {
            this.trend = tooFew(WORDS.say("trend.day"));
            this.p = 1;
            return;
        }
        Slope slope;
        if (model != null && !model.tellsHeight() && heightsDiffer(by)) {
            slope = together(by, weeks, medians);
        } else {
            TheilSen fit = TheilSen.of(weeks, medians);
            double extra = model == null ? 0 : model.variance(slopeWeights(by, weeks));
            slope = new Slope(
                    fit.slope(),
                    widened(fit.slope(), fit.interval(), extra, by.sessions()),
                    model == null ? PLAIN : EQUAL);
        }
        Trend found = verdict(slope, weeks[weeks.length - 1]);
        this.trend = hidden ? found.notTold(HIDDEN) : found;
        this.p = hidden ? 1 : slope.p();
    }

    /** The trend, with its verdict. */
    Trend trend() {
        return trend;
    }

    /** Standard deviation of the differences of successive session medians over √2; null with fewer than three sessions. */
    @Nullable Double typicalError() {
        return typicalError;
    }

    /** The smallest change that is more than the typical error explains, 95 %. */
    @Nullable Double mdc95() {
        return typicalError == null ? null : Double.valueOf(MDC_FACTOR * typicalError);
    }

    /** The sessions it was taken from. */
    List<SessionDate> dates() {
        return dates;
    }

    /** Their medians, at equal height and foot where heights are noted. */
    List<Double> medians() {
        return Arrays.stream(medians).boxed().toList();
    }

    /** How alike landings of one day are, or null where that cannot be told. */
    @Nullable WithinDay withinDay() {
        return withinDay;
    }

    /** How often chance alone would give a slope as steep. */
    double p() {
        return p;
    }

    private record Slope(@Nullable Double perWeek, @Nullable Interval interval, String method) {

        double p() {
            if (perWeek == null || interval == null) {
                return 1;
            }
            double reach = perWeek > 0 ? perWeek - interval.low() : interval.high() - perWeek;
            double z = reach > 0 ? Math.abs(perWeek) / reach * 1.96 : perWeek == 0 ? 0 : Double.POSITIVE_INFINITY;
            return 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-z);
        }
    }

    private static Trend tooFew(String why) {
        return new Trend(null, null, null, Trend.TOO_FEW, null, why);
    }

    private Trend verdict(Slope slope, double span) {
        Double perWeek = slope.perWeek();
        Interval interval = slope.interval();
        if (perWeek == null || interval == null) {
            return new Trend(perWeek, null, null, Trend.NO_CLEAR_CHANGE, slope.method(), NOT_APART);
        }
        Double mdc = mdc95();
        boolean clear = interval.clearOfZero() && mdc != null && Math.abs(perWeek) * span > mdc;
        String verdict = !clear ? Trend.NO_CLEAR_CHANGE : perWeek > 0 ? Trend.RISING : Trend.FALLING;
        return new Trend(perWeek, interval.low(), interval.high(), verdict, slope.method(), null);
    }

    private static @Nullable Double typicalError(double[] medians) {
        if (medians.length < SESSIONS_FOR_ERROR) {
            return null;
        }
        double[] differences = new double[medians.length - 1];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = medians[i + 1] - medians[i];
        }
        return new StandardDeviation().evaluate(differences) / Math.sqrt(2);
    }

    /** What each landing weighs in the slope of a straight line through the means of sessions. */
    private static double[] slopeWeights(BySession by, double[] weeks) {
        double mean = 0;
        for (double week : weeks) {
            mean += week / weeks.length;
        }
        double squares = 0;
        for (double week : weeks) {
            squares += (week - mean) * (week - mean);
        }
        int[] counts = by.counts();
        double[] weights = new double[by.session().length];
        for (int i = 0; i < weights.length; i++) {
            int s = by.session()[i];
            weights[i] = (weeks[s] - mean) / squares / counts[s];
        }
        return weights;
    }

    private static @Nullable Interval widened(double slope, @Nullable Interval own, double variance, int sessions) {
        if (own == null || variance == 0) {
            return own;
        }
        double reach = StudentT.reach(sessions - 1) * Math.sqrt(variance);
        return new Interval(
                slope - Math.hypot(slope - own.low(), reach), slope + Math.hypot(own.high() - slope, reach));
    }

    private static boolean heightsDiffer(BySession by) {
        double[] heights = heights(by);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double height : heights) {
            low = Math.min(low, height);
            high = Math.max(high, height);
        }
        return high - low > HeightModel.EQUAL_M;
    }

    private static double[] heights(BySession by) {
        // Where each foot has its own box, what the box does is counted as the foot's: only what else differs is
        // height.
        return by.medians(HeightModel.heightsAtEqualFoot(by.landings(), by.session(), by.sessions()));
    }

    private static Slope together(BySession by, double[] weeks, double[] medians) {
        Slope none = new Slope(null, null, TOGETHER);
        if (by.sessions() < SESSIONS_FOR_BOTH) {
            return none;
        }
        double[] heights = heights(by);
        double[][] x = new double[weeks.length][];
        for (int s = 0; s < x.length; s++) {
            x[s] = new double[] {weeks[s], Math.sqrt(Math.max(0, heights[s]))};
        }
        double[] roots = Arrays.stream(x).mapToDouble(row -> row[1]).toArray();
        double alike = new PearsonsCorrelation().correlation(weeks, roots);
        if (!(alike * alike <= ALIKE)) {
            return none;
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        try {
            regression.newSampleData(medians, x);
            double slope = regression.estimateRegressionParameters()[1];
            double error = regression.estimateRegressionParametersStandardErrors()[1];
            return Double.isFinite(error)
                    ? new Slope(slope, new StudentT(slope, error, by.sessions() - 3).interval(), TOGETHER)
                    : none;
        } catch (SingularMatrixException e) {
            return none;
        }
    }
}

package evenfall.report.block;

import evenfall.report.measure.Measure;
import evenfall.report.measure.Turning;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Medians;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Follows one measure over the sessions of a block. */
final class CourseAnalysis {

    /** Quantities that cannot be nothing or less, so that a percentage of them means something. */
    private static final Set<String> POSITIVE = Set.of(
            "flightS",
            "impactSpeedMS",
            "dropHeightM",
            "peakG",
            "peakUpperBackG",
            "riseMs",
            "loadingRateGPerS",
            "depthM",
            "brakingS",
            "meanBrakingG");

    /** How many chances {@link #chances} gives. */
    static final int CHANCES = 4;

    private final Measure measure;
    private final List<BlockLanding> measured;
    private final boolean positive;
    private final TrendAnalysis trend;
    private final SidesAnalysis sides;
    private final @Nullable BothFeetAnalysis bothFeet;
    private final TiringAnalysis tiring;

    /**
     * A measure.
     *
     * @param measured the counted landings that have a value of it, at least one
     * @param heights whether any landing of the block has a drop height noted
     */
    CourseAnalysis(Measure measure, List<BlockLanding> measured, boolean heights) {
        this.measure = measure;
        this.measured = measured;
        Turning turning = Turning.of(measure.name());
        boolean equal = heights && measured.stream().anyMatch(landing -> landing.heightM() != null);
        this.trend = new TrendAnalysis(measured, equal, this::value, this::cutOff);
        Double mdc95 = trend.mdc95();
        this.positive = POSITIVE.contains(measure.name())
                && measured.stream().mapToDouble(this::value).allMatch(v -> v > 0);
        this.sides = new SidesAnalysis(
                measured,
                equal,
                landing -> {
                    var side = landing.side();
                    return side == null ? value(landing) : turning.turned(value(landing), side);
                },
                positive,
                mdc95,
                this::cutOff);
        this.bothFeet = turning == Turning.NONE ? null : new BothFeetAnalysis(measured, turning, this::value, mdc95);
        this.tiring = new TiringAnalysis(measured, equal, this::value, this::cutOff, mdc95);
    }

    /** How often chance alone would give the trend, the sides, the two-footed bias and the drift within sessions. */
    double[] chances() {
        return new double[] {trend.p(), sides.p(), bothFeet == null ? 1 : bothFeet.p(), tiring.p()};
    }

    /** The course, with its chances after allowing for all that was looked at. */
    MeasureCourse course(Chances chances) {
        return new MeasureCourse(
                measure.unit(),
                sessions(),
                trend.typicalError(),
                trend.mdc95(),
                trend.trend(),
                sides.sides(),
                bothFeet == null ? null : bothFeet.bothFeet(),
                tiring.tiring(),
                chances,
                new Evidence(trend.dates(), trend.medians(), trend.withinDay(), sides.feet(), positive));
    }

    private List<SessionMedian> sessions() {
        BySession by = new BySession(measured);
        double[] all = measured.stream().mapToDouble(this::value).toArray();
        double[][] values = by.split(all);
        boolean[] atLeast = by.atLeast(by.split(CutOff.raised(measured, all, this::cutOff)));
        List<SessionMedian> sessions = new ArrayList<>();
        for (int s = 0; s < values.length; s++) {
            Interval interval = Medians.interval(values[s]);
            sessions.add(new SessionMedian(
                    by.dates().get(s),
                    values[s].length,
                    Medians.of(values[s]),
                    interval == null ? null : Double.valueOf(interval.low()),
                    interval == null ? null : Double.valueOf(interval.high()),
                    atLeast[s]));
        }
        return sessions;
    }

    private boolean cutOff(BlockLanding landing) {
        return landing.atLeast().contains(measure.name());
    }

    private double value(BlockLanding landing) {
        Double value = landing.values().get(measure.name());
        return value == null ? Double.NaN : value;
    }
}

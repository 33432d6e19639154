package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.Measure;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/** Follows one measure over the sessions of a block. */
final class CourseAnalysis {

    private static final int SESSIONS_FOR_TREND = 4;
    private static final int SESSIONS_FOR_SIDES = 3;
    private static final int SESSIONS_FOR_ERROR = 3;
    private static final double DAYS_A_WEEK = 7;

    /** 1.96 √2: two measurements, each with the typical error, 95 % (reference: Hopkins 2000, Sports Med 30:1). */
    private static final double MDC_FACTOR = 1.96 * Math.sqrt(2);

    private static final String METHOD =
            "median of slopes between plain session medians (Sen 1968), interval by Kendall's distribution";
    private static final String NOT_EQUAL_HEIGHT =
            "Drop heights are noted, and this version does not compare sessions at equal height yet.";

    private final Measure measure;
    private final List<BlockLanding> measured;
    private final boolean heights;

    /**
     * A measure.
     *
     * @param measured the counted landings that have a value of it, at least one
     * @param heights whether any landing of the block has a drop height noted
     */
    CourseAnalysis(Measure measure, List<BlockLanding> measured, boolean heights) {
        this.measure = measure;
        this.measured = measured;
        this.heights = heights;
    }

    MeasureCourse course() {
        List<SessionMedian> sessions = sessions();
        Double typicalError = heights ? null : typicalError(sessions);
        Double mdc95 = typicalError == null ? null : Double.valueOf(MDC_FACTOR * typicalError);
        Turning turning = Turning.of(measure.name());
        return new MeasureCourse(
                measure.unit(),
                sessions,
                typicalError,
                mdc95,
                trend(sessions, mdc95),
                sides(turning),
                turning == Turning.NONE ? null : bothFeet());
    }

    private List<SessionMedian> sessions() {
        Map<SessionDate, List<BlockLanding>> bySession = new TreeMap<>();
        for (BlockLanding landing : measured) {
            bySession.computeIfAbsent(landing.date(), date -> new ArrayList<>()).add(landing);
        }
        List<SessionMedian> sessions = new ArrayList<>();
        bySession.forEach((date, landings) -> {
            double[] values = landings.stream().mapToDouble(this::value).toArray();
            double[] interval = Medians.interval(values);
            sessions.add(new SessionMedian(
                    date,
                    values.length,
                    Medians.of(values),
                    interval == null ? null : Double.valueOf(interval[0]),
                    interval == null ? null : Double.valueOf(interval[1])));
        });
        return sessions;
    }

    private static @Nullable Double typicalError(List<SessionMedian> sessions) {
        if (sessions.size() < SESSIONS_FOR_ERROR) {
            return null;
        }
        double[] differences = new double[sessions.size() - 1];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = sessions.get(i + 1).median() - sessions.get(i).median();
        }
        return new StandardDeviation().evaluate(differences) / Math.sqrt(2);
    }

    private Trend trend(List<SessionMedian> sessions, @Nullable Double mdc95) {
        if (sessions.size() < SESSIONS_FOR_TREND) {
            return new Trend(null, null, null, Trend.TOO_FEW, null, "A trend needs four sessions or more.");
        }
        if (heights) {
            return new Trend(null, null, null, null, null, NOT_EQUAL_HEIGHT);
        }
        SessionDate first = sessions.get(0).date();
        double[] weeks = sessions.stream()
                .mapToDouble(session ->
                        ChronoUnit.DAYS.between(first.day(), session.date().day()) / DAYS_A_WEEK)
                .toArray();
        double span = weeks[weeks.length - 1];
        if (span == 0) {
            return new Trend(null, null, null, Trend.TOO_FEW, null, "All sessions are of one day.");
        }
        TheilSen fit = TheilSen.of(
                weeks, sessions.stream().mapToDouble(SessionMedian::median).toArray());
        boolean clear = clearOfZero(fit) && mdc95 != null && Math.abs(fit.slope()) * span > mdc95;
        String verdict = !clear ? "no clear change" : fit.slope() > 0 ? "rising" : "falling";
        String why = fit.low() == null ? "So few sessions give no 95 % interval." : null;
        return new Trend(fit.slope(), fit.low(), fit.high(), verdict, METHOD, why);
    }

    private static boolean clearOfZero(TheilSen fit) {
        Double low = fit.low();
        Double high = fit.high();
        return low != null && high != null && (low > 0 || high < 0);
    }

    private Sides sides(Turning turning) {
        long sessionsWithBoth = measured.stream()
                .map(BlockLanding::date)
                .distinct()
                .filter(date -> has(date, Side.LEFT) && has(date, Side.RIGHT))
                .count();
        boolean few = sessionsWithBoth < SESSIONS_FOR_SIDES;
        return new Sides(
                oneSide(turning, Side.LEFT),
                oneSide(turning, Side.RIGHT),
                few ? Trend.TOO_FEW : null,
                few
                        ? "Sides are compared from three sessions on that have landings on each foot."
                        : "This version does not compare sides yet.");
    }

    private Sides.OneSide oneSide(Turning turning, Side side) {
        double[] values = measured.stream()
                .filter(landing -> landing.side() == side)
                .mapToDouble(landing -> turning.turned(value(landing), side))
                .toArray();
        return new Sides.OneSide(values.length, values.length == 0 ? null : Double.valueOf(Medians.of(values)));
    }

    private BothFeet bothFeet() {
        double[] values = measured.stream()
                .filter(landing -> landing.side() == Side.BOTH)
                .mapToDouble(this::value)
                .toArray();
        long sessions = measured.stream()
                .filter(landing -> landing.side() == Side.BOTH)
                .map(BlockLanding::date)
                .distinct()
                .count();
        boolean few = sessions < SESSIONS_FOR_SIDES;
        return new BothFeet(
                values.length,
                values.length == 0 ? null : Double.valueOf(Medians.of(values)),
                few ? Trend.TOO_FEW : null,
                few
                        ? "Two-footed landings are judged from three sessions on that have them."
                        : "This version does not judge the bias of two-footed landings yet.");
    }

    private boolean has(SessionDate date, Side side) {
        return measured.stream()
                .anyMatch(landing -> landing.side() == side && landing.date().equals(date));
    }

    private double value(BlockLanding landing) {
        Double value = landing.values().get(measure.name());
        return value == null ? Double.NaN : value;
    }
}

package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Jackknife;
import evenfall.report.statistics.Medians;
import evenfall.report.statistics.StudentT;
import evenfall.report.statistics.Symmetry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * Left against right on one foot, at equal height: in each session that has both, the median of the left landings less that
 * of the right ones; over the sessions, their mean.
 *
 * <p>The interval comes of leaving out one session after another (jackknife: Efron and Tibshirani 1993, chapter 11), what
 * height does being found anew each time, with Student's t.
 */
final class SidesAnalysis {

    private static final Words WORDS = Words.beside(SidesAnalysis.class);

    private static final int SESSIONS_FOR_SIDES = 3;
    /** 1.96 + 0.84: called at 5 %, found four times in five: common practice. */
    private static final double CALLED_AND_FOUND = 1.96 + 0.8416;

    private static final String PLAIN = WORDS.say("sides.method");
    private static final String EQUAL = WORDS.say("sides.method.height");

    private final Sides sides;
    private final double p;
    private final Evidence.@Nullable Feet feet;

    /**
     * Compares.
     *
     * @param measured counted landings that have a value
     * @param heights whether sides are to be compared at equal height
     * @param positive whether the measure is a strictly positive quantity, for which a percentage makes sense
     * @param mdc95 smallest change that is more than the typical error explains, or null if not known
     * @param cutOff whether a landing's value may be larger
     */
    SidesAnalysis(
            List<BlockLanding> measured,
            boolean heights,
            ToDoubleFunction<BlockLanding> turned,
            boolean positive,
            @Nullable Double mdc95,
            Predicate<BlockLanding> cutOff) {
        List<BlockLanding> onOneFoot = measured.stream()
                .filter(landing -> landing.side() == Side.LEFT || landing.side() == Side.RIGHT)
                .filter(landing -> !heights || landing.heightM() != null)
                .toList();
        Sides.OneSide left = oneSide(onOneFoot, turned, Side.LEFT);
        Sides.OneSide right = oneSide(onOneFoot, turned, Side.RIGHT);
        List<List<BlockLanding>> sessions = withBoth(onOneFoot);
        if (sessions.size() < SESSIONS_FOR_SIDES) {
            this.sides = Sides.untold(left, right, Trend.TOO_FEW, null, WORDS.say("sides.few"));
            this.p = 1;
            this.feet = null;
            return;
        }
        if (sessions.stream()
                .anyMatch(session -> hides(session, cutOff, Side.LEFT) || hides(session, cutOff, Side.RIGHT))) {
            this.sides = Sides.untold(left, right, Sides.NO_CLEAR_DIFFERENCE, null, WORDS.say("sides.hidden"));
            this.p = 1;
            this.feet = null;
            return;
        }
        Contrast whole = contrast(sessions, heights, turned);
        if (whole == null) {
            this.sides = Sides.untold(left, right, Sides.NO_CLEAR_DIFFERENCE, EQUAL, WORDS.say("sides.apart"));
            this.p = 1;
            this.feet = null;
            return;
        }
        double d = whole.difference;
        StudentT said = new StudentT(d, jackknife(sessions, heights, turned, d), sessions.size() - 1);
        Interval interval = said.interval();
        this.p = said.chance();
        this.feet = new Evidence.Feet(whole.bySession, whole.middle, whole.spread);
        boolean clear = mdc95 != null && interval.clearOfZero() && Math.abs(d) > mdc95;
        this.sides = new Sides(
                left,
                right,
                d,
                interval,
                positive ? symmetry(whole) : null,
                !clear ? Sides.NO_CLEAR_DIFFERENCE : d > 0 ? "left greater" : "right greater",
                needed(whole.spread, d, mdc95),
                heights ? EQUAL : PLAIN,
                null);
    }

    Sides sides() {
        return sides;
    }

    /** What it was taken from, or null where sides are not compared. */
    Evidence.@Nullable Feet feet() {
        return feet;
    }

    /** How often chance alone would give a difference as large. */
    double p() {
        return p;
    }

    /** Whether at least half of the values of a foot may be larger. */
    private static boolean hides(List<BlockLanding> session, Predicate<BlockLanding> cutOff, Side side) {
        List<BlockLanding> foot =
                session.stream().filter(landing -> landing.side() == side).toList();
        return 2 * CutOff.share(foot, cutOff) >= 1;
    }

    private static Sides.OneSide oneSide(
            List<BlockLanding> landings, ToDoubleFunction<BlockLanding> turned, Side side) {
        double[] values = landings.stream()
                .filter(landing -> landing.side() == side)
                .mapToDouble(turned)
                .toArray();
        return new Sides.OneSide(values.length, values.length == 0 ? null : Double.valueOf(Medians.of(values)));
    }

    /** The sessions that have landings on each foot. */
    private static List<List<BlockLanding>> withBoth(List<BlockLanding> landings) {
        List<List<BlockLanding>> sessions = new BySession(landings).split();
        sessions.removeIf(session -> session.stream().noneMatch(landing -> landing.side() == Side.LEFT)
                || session.stream().noneMatch(landing -> landing.side() == Side.RIGHT));
        return sessions;
    }

    /**
     * A difference.
     *
     * @param difference left less right
     * @param bySession the same of each session
     * @param middle half their sum
     * @param spread standard deviation between landings of one foot and day
     */
    private record Contrast(double difference, List<Double> bySession, double middle, double spread) {}

    /** Left less right over these sessions; null where heights cannot be made equal. */
    private static @Nullable Contrast contrast(
            List<List<BlockLanding>> sessions, boolean heights, ToDoubleFunction<BlockLanding> turned) {
        List<BlockLanding> all = sessions.stream().flatMap(List::stream).toList();
        double[] values = all.stream().mapToDouble(turned).toArray();
        if (heights) {
            BySession by = new BySession(all);
            HeightModel model = HeightModel.of(all, by.session(), by.sessions(), values);
            if (!model.tellsHeight() && boxesDiffer(sessions)) {
                return null;
            }
            values = model.atEqualHeight();
        }
        List<Double> bySession = new ArrayList<>();
        double difference = 0;
        double middle = 0;
        double squares = 0;
        int freedom = 0;
        int at = 0;
        for (List<BlockLanding> session : sessions) {
            double[] left = of(session, values, at, Side.LEFT);
            double[] right = of(session, values, at, Side.RIGHT);
            at += session.size();
            double of = Medians.of(left) - Medians.of(right);
            bySession.add(of);
            difference += of / sessions.size();
            middle += (Medians.of(left) + Medians.of(right)) / 2 / sessions.size();
            squares += squares(left) + squares(right);
            freedom += left.length + right.length - 2;
        }
        return new Contrast(difference, bySession, middle, freedom > 0 ? Math.sqrt(squares / freedom) : 0);
    }

    private static double[] of(List<BlockLanding> session, double[] values, int from, Side side) {
        double[] some = new double[session.size()];
        int count = 0;
        for (int i = 0; i < session.size(); i++) {
            if (session.get(i).side() == side) {
                some[count++] = values[from + i];
            }
        }
        return Arrays.copyOf(some, count);
    }

    private static double squares(double[] values) {
        double spread = values.length > 1 ? new StandardDeviation().evaluate(values) : 0;
        return spread * spread * (values.length - 1);
    }

    private static boolean boxesDiffer(List<List<BlockLanding>> sessions) {
        double off = 0;
        for (List<BlockLanding> session : sessions) {
            off += meanHeight(session, Side.LEFT) - meanHeight(session, Side.RIGHT);
        }
        return Math.abs(off / sessions.size()) > HeightModel.EQUAL_M;
    }

    private static double meanHeight(List<BlockLanding> session, Side side) {
        return session.stream()
                .filter(landing -> landing.side() == side)
                .map(BlockLanding::heightM)
                .mapToDouble(height -> height == null ? 0 : height)
                .average()
                .orElse(0);
    }

    private static double jackknife(
            List<List<BlockLanding>> sessions, boolean heights, ToDoubleFunction<BlockLanding> turned, double whole) {
        int n = sessions.size();
        double[] without = new double[n];
        for (int s = 0; s < n; s++) {
            List<List<BlockLanding>> rest = new ArrayList<>(sessions);
            rest.remove(s);
            Contrast one = contrast(rest, heights, turned);
            without[s] = one == null ? whole : one.difference;
        }
        return Jackknife.error(without);
    }

    private static @Nullable Double symmetry(Contrast contrast) {
        double half = contrast.difference / 2;
        return contrast.middle > 0 ? Symmetry.index(contrast.middle + half, contrast.middle - half) : null;
    }

    /** Landings on each foot that would show a difference of this size, or of the smallest that is called one. */
    private static @Nullable Integer needed(double spread, double difference, @Nullable Double mdc95) {
        double size = Math.max(Math.abs(difference), mdc95 == null ? 0 : mdc95);
        if (!(size > 0)) {
            return null;
        }
        return landings(spread, size);
    }

    /** Landings on each foot that show a difference of this size four times in five, were days all the same. */
    static int landings(double spread, double size) {
        double ratio = CALLED_AND_FOUND * spread / size;
        return (int) Math.max(2, Math.min(1e6, Math.ceil(2 * ratio * ratio)));
    }
}

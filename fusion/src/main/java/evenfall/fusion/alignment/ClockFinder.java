package evenfall.fusion.alignment;

import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;
import evenfall.fusion.filtering.ZeroPhase;
import evenfall.ingest.parallel.SideBySide;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds how the clocks of two sensors on one trunk run against each other, from the motion they share: a first guess by
 * correlating the vertical forces as a whole, then short stretches one by one, then a robust line through their lags.
 *
 * <p>Near landings the spine gives and the shoulders follow later, so stretches there count only when nothing else is
 * left. Away from them it is folding that misleads: the line is found again without what turning does at the ends of the lever
 * arms ({@link LeverArms}).
 */
public final class ClockFinder {

    /** Forces are compared below it: common practice, no source. */
    private static final double CUTOFF_HZ = 4;

    static final double STRETCH_S = 4;
    /** In steps of {@link ForceColumn}: a stretch, from one to the next, and how far the guess may be off. */
    static final int LENGTH = ForceColumn.steps(STRETCH_S);

    static final int STRIDE = ForceColumn.steps(2);
    static final int REACH = ForceColumn.steps(0.3);
    /** Stretches that are less alike tell no lag; common practice, no source. */
    static final double LEAST_CORRELATION = 0.97;
    /** The same where only landings are left to tell, in which the spine gives. */
    static final double FALLBACK_CORRELATION = 0.9;
    /** Each lag found moves the place where the next is looked for by this part of what it differs: clocks drift slowly. */
    static final double FOLLOWED_PART = 0.3;
    /** Below this standard deviation of the force there is nothing to compare, m/s². */
    static final double LEAST_MOTION = 0.25;
    /** First guess from at most so much of the recording, s. */
    static final double GUESS_S = 1200;

    /** Nearer to a landing the spine gives and the shoulders follow later. */
    static final double LANDING_ROOM_S = 3;
    /** How much later the shoulders move than the pelvis below 4 Hz, s: from simulated spines. */
    private static final double SPINE_DELAY_S = 0.0017;
    /** How far people's spines may differ from that, s: half the delay itself. */
    private static final double SPINE_DELAY_SIGMA_S = 0.0009;

    /** How often the lever arms and the line are found from one another. */
    private static final int ROUNDS = 3;
    /** A line found before is right within so many steps. */
    private static final int NEAR = 3;
    /** How far the middle of people's trunks is from one point, s: from simulated spines. */
    private static final double MIDDLE_SIGMA_S = 0.00048;

    /** Stretches overlap by half and motions repeat, so a line is less sure than of lags that know nothing of one another. */
    private static final double OVERLAP = 1.7;

    /** A line through fewer lags is told by chance: common practice, no source. */
    static final int LEAST_STRETCHES = 4;
    /**
     * Of the stretches in which both sensors moved, as many must fit at least: 79 to 98 in 100 do on simulated sessions, 4 to 8
     * where the upper back's recording is another session's.
     */
    private static final double LEAST_SHARE = 0.25;
    /** Columns shorter than this hold nothing to compare. */
    private static final int LEAST_COLUMN = 100;

    /** Lags that scatter so that they leave more than this open are of two that do not belong together, s. */
    private static final double LOOSEST_S = 0.02;

    static final String AWAY_FROM_LANDINGS = "shared motion away from landings";
    static final String WITH_LANDINGS = "shared motion, landings included";

    private final TrunkEnd pelvis;
    private final TrunkEnd upperBack;

    private ClockFinder(TrunkEnd pelvis, TrunkEnd upperBack) {
        this.pelvis = pelvis;
        this.upperBack = upperBack;
    }

    /** A finder for two sensors. */
    public static ClockFinder of(TrunkEnd pelvis, TrunkEnd upperBack) {
        return new ClockFinder(pelvis, upperBack);
    }

    /**
     * The map between the clocks, or null if the two share no motion that could tell.
     *
     * @param landingsS contacts of landings, s on the pelvis's clock
     */
    public @Nullable ClockMap map(List<Double> landingsS) {
        int size = Math.min(pelvis.size(), upperBack.size());
        if (size < LEAST_COLUMN) {
            return null;
        }
        ClockMap map = map(guess(pelvis.force(), upperBack.force()), landingsS);
        int whole = Math.max(pelvis.size(), upperBack.size());
        // A sensor that was switched on late shares nothing of the beginning.
        return map == null && whole > ForceColumn.steps(GUESS_S)
                ? map(OffsetGuess.of(pelvis.force(), upperBack.force(), whole), landingsS)
                : map;
    }

    private @Nullable ClockMap map(OffsetGuess guess, List<Double> landingsS) {
        List<Integer> stretches = stretches(landingsS);
        ClockMap away = fit(guess.steps(), stretches, LEAST_CORRELATION, AWAY_FROM_LANDINGS);
        ClockMap map = away != null
                ? withoutTurning(away, stretches)
                : fit(guess.steps(), stretches(List.of()), FALLBACK_CORRELATION, WITH_LANDINGS);
        return map == null ? null : map.withRival(guess);
    }

    /** A map found anew from the forces of the point in the middle of the trunk, a few times over. */
    private ClockMap withoutTurning(ClockMap first, List<Integer> stretches) {
        ClockMap map = first;
        for (int round = 0; round < ROUNDS; round++) {
            LeverArms arms = LeverArms.fit(pelvis, upperBack, stretches, LENGTH, map);
            ClockMap next = arms == null ? null : ofMiddle(arms, stretches, map);
            if (next == null) {
                return map;
            }
            map = next;
        }
        return map;
    }

    private @Nullable ClockMap ofMiddle(LeverArms arms, List<Integer> stretches, ClockMap before) {
        List<double[]> forces = SideBySide.map(
                "trunk forces",
                2,
                k -> k == 0
                        ? pelvis.forceWithout(arms.pelvis(), arms.pelvisBias())
                        : upperBack.forceWithout(arms.upperBack(), arms.upperBackBias()));
        List<Double> times = new ArrayList<>();
        List<Double> lags = new ArrayList<>();
        for (int from : stretches) {
            double middle = middleS(from);
            int centre = (int) Math.round((before.toUpperBack(middle) - middle) / ForceColumn.STEP_S);
            Lag lag = Lag.between(forces.get(0), from, LENGTH, forces.get(1), centre - NEAR, centre + NEAR);
            if (lag.correlation() > LEAST_CORRELATION) {
                times.add(middle);
                lags.add(lag.samples() * ForceColumn.STEP_S);
            }
        }
        return line(times, lags, 0, MIDDLE_SIGMA_S, before.method());
    }

    /** First places of the stretches that move and lie away from landings. */
    private List<Integer> stretches(List<Double> landingsS) {
        List<Integer> stretches = new ArrayList<>();
        for (int from = 0; from + LENGTH <= pelvis.size(); from += STRIDE) {
            if (!byLanding(landingsS, startS(from)) && deviation(pelvis.force(), from, LENGTH) >= LEAST_MOTION) {
                stretches.add(from);
            }
        }
        return stretches;
    }

    private static double startS(int from) {
        return ForceColumn.timeS(from);
    }

    private static double middleS(int from) {
        return startS(from) + STRETCH_S / 2;
    }

    static double[] smooth(double[] grid) {
        Biquad lowPass = Butterworth.twoPassLowPass(CUTOFF_HZ, 1 / ForceColumn.STEP_S);
        return ZeroPhase.filter(lowPass, grid);
    }

    /** What the whole of two columns tells at first. */
    static OffsetGuess guess(double[] pelvis, double[] upperBack) {
        return OffsetGuess.of(pelvis, upperBack, ForceColumn.steps(GUESS_S));
    }

    private @Nullable ClockMap fit(int guess, List<Integer> stretches, double leastCorrelation, String method) {
        List<Double> times = new ArrayList<>();
        List<Double> lags = new ArrayList<>();
        double near = guess;
        int shared = 0;
        for (int from : stretches) {
            int centre = (int) Math.round(near);
            shared += from + centre >= 0 && from + centre + LENGTH <= upperBack.size() ? 1 : 0;
            Lag lag = Lag.between(pelvis.force(), from, LENGTH, upperBack.force(), centre - REACH, centre + REACH);
            if (lag.correlation() > leastCorrelation) {
                times.add(middleS(from));
                lags.add(lag.samples() * ForceColumn.STEP_S);
                near += FOLLOWED_PART * (lag.samples() - near);
            }
        }
        return fits(times.size(), shared) ? line(times, lags, method) : null;
    }

    /** Whether enough of the stretches that two sensors share are alike for one person to have worn both. */
    static boolean fits(int alike, int shared) {
        return alike >= LEAST_SHARE * shared;
    }

    /** Whether a stretch that starts at a moment lies near one of the landings, which are in order. */
    static boolean byLanding(List<Double> landingsS, double start) {
        int k = Collections.binarySearch(landingsS, start - LANDING_ROOM_S);
        int next = k < 0 ? -k - 1 : k;
        return next < landingsS.size() && landingsS.get(next) - LANDING_ROOM_S < start + STRETCH_S;
    }

    /** The map that lags (s) of the sensors as they are tell at times (s), or null if they are too few or tell none. */
    static @Nullable ClockMap line(List<Double> times, List<Double> lags, String method) {
        return line(times, lags, SPINE_DELAY_S, SPINE_DELAY_SIGMA_S, method);
    }

    private static @Nullable ClockMap line(
            List<Double> times, List<Double> lags, double delayS, double delaySigmaS, String method) {
        if (times.size() < LEAST_STRETCHES) {
            return null;
        }
        ClockLine line = ClockLine.fit(array(times), array(lags));
        double sigma = Math.hypot(OVERLAP * line.sigmaS(), delaySigmaS);
        if (sigma > LOOSEST_S) {
            return null;
        }
        return new ClockMap(line.offsetS() - delayS, line.drift() * 1e6, 1000 * sigma, method);
    }

    static double deviation(double[] x, int from, int length) {
        double sum = 0;
        double squares = 0;
        for (int i = from; i < from + length; i++) {
            sum += x[i];
            squares += x[i] * x[i];
        }
        double mean = sum / length;
        return Math.sqrt(Math.max(0, squares / length - mean * mean));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

package evenfall.fusion.alignment;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Follows how the clocks of two sensors run against each other while their samples come: the stretches of
 * {@link ClockFinder}, each looked at once, as soon as what comes after it can no longer change it.
 */
public final class ClockFollower {

    private static final int LENGTH = ClockFinder.LENGTH;
    private static final int REACH = ClockFinder.REACH;
    /** Further from its end than this a low-pass of 4 Hz in both directions no longer sees that a column ends. */
    private static final int ROOM = ForceColumn.steps(1.5);
    /** The first guess is tried whenever the samples are so many times as many. */
    private static final double GUESS_ANEW = 1.2;

    /** Fewer values than this hold too few stretches for a guess. */
    private static final int GUESS_FROM = ForceColumn.steps(8);

    private final ForceColumn pelvis = new ForceColumn();
    private final ForceColumn upperBack = new ForceColumn();
    private final List<Double> times = new ArrayList<>();
    private final List<Double> lags = new ArrayList<>();
    private final List<Double> correlations = new ArrayList<>();
    private boolean guessed;
    private int guessedAt;
    private double near;
    private int next;

    /** Takes the pelvis's samples that have an orientation and were not taken yet. */
    public void addPelvis(SensorStream stream, OrientationTrack track) {
        pelvis.add(stream, track);
    }

    /** Takes the upper back's samples that have an orientation and were not taken yet. */
    public void addUpperBack(SensorStream stream, OrientationTrack track) {
        upperBack.add(stream, track);
    }

    /**
     * The map that the motion so far tells, or null while it tells none.
     *
     * @param landingsS contacts of landings so far, s on the pelvis's clock, in order
     */
    public @Nullable ClockMap map(List<Double> landingsS) {
        if (!guessed) {
            guess();
        }
        if (guessedAt > 0) {
            lookAtStretches();
        }
        ClockMap map = fit(ClockFinder.LEAST_CORRELATION, landingsS, ClockFinder.AWAY_FROM_LANDINGS);
        return map != null ? map : fit(ClockFinder.FALLBACK_CORRELATION, List.of(), ClockFinder.WITH_LANDINGS);
    }

    /** A guess is good where enough stretches then agree with it. */
    private void guess() {
        int size = Math.min(pelvis.size(), upperBack.size());
        if (size < GUESS_FROM || size < GUESS_ANEW * guessedAt) {
            return;
        }
        guessedAt = size;
        int span = Math.min(size, ForceColumn.steps(ClockFinder.GUESS_S));
        OffsetGuess found = ClockFinder.guess(
                ClockFinder.smooth(pelvis.part(0, Math.min(span, pelvis.size()))),
                ClockFinder.smooth(upperBack.part(0, Math.min(span, upperBack.size()))));
        near = found.steps();
        next = 0;
        times.clear();
        lags.clear();
        correlations.clear();
        lookAtStretches();
        guessed = fit(ClockFinder.LEAST_CORRELATION, List.of(), "") != null;
    }

    private void lookAtStretches() {
        while (next + LENGTH + ROOM <= pelvis.size() && next + LENGTH + ROOM + REACH + near <= upperBack.size()) {
            lookAt(next);
            next += ClockFinder.STRIDE;
        }
    }

    private void lookAt(int from) {
        int centre = (int) Math.round(near);
        int first = Math.max(0, from - ROOM);
        double[] x = ClockFinder.smooth(pelvis.part(first, from + LENGTH + ROOM));
        if (ClockFinder.deviation(x, from - first, LENGTH) < ClockFinder.LEAST_MOTION) {
            return;
        }
        int start = Math.max(0, Math.min(upperBack.size(), from + centre - REACH - ROOM));
        int end = Math.max(start, Math.min(upperBack.size(), from + centre + REACH + LENGTH + ROOM));
        if (end - start < LENGTH) {
            return;
        }
        double[] y = ClockFinder.smooth(upperBack.part(start, end));
        int shift = first - start;
        Lag lag = Lag.between(x, from - first, LENGTH, y, centre + shift - REACH, centre + shift + REACH);
        double steps = lag.samples() - shift;
        times.add(ForceColumn.timeS(from) + ClockFinder.STRETCH_S / 2);
        lags.add(steps * ForceColumn.STEP_S);
        correlations.add(lag.correlation());
        near += lag.correlation() > ClockFinder.LEAST_CORRELATION ? ClockFinder.FOLLOWED_PART * (steps - near) : 0;
    }

    private @Nullable ClockMap fit(double leastCorrelation, List<Double> landingsS, String method) {
        List<Double> goodTimes = new ArrayList<>();
        List<Double> goodLags = new ArrayList<>();
        int shared = 0;
        for (int k = 0; k < times.size(); k++) {
            if (ClockFinder.byLanding(landingsS, times.get(k) - ClockFinder.STRETCH_S / 2)) {
                continue;
            }
            shared++;
            if (correlations.get(k) > leastCorrelation) {
                goodTimes.add(times.get(k));
                goodLags.add(lags.get(k));
            }
        }
        return ClockFinder.fits(goodTimes.size(), shared) ? ClockFinder.line(goodTimes, goodLags, method) : null;
    }
}

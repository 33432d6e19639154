package evenfall.fusion.alignment;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SampleCursor;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;

/**
 * The vertical force of one sensor on an even time grid, low-passed, for comparing two sensors.
 *
 * <p>Each grid value is the exact mean over one grid step of the force, taken as straight between samples, so jitter of
 * the samples does not shift it. Forces above 2.5 g count as 2.5 g: what an impact peak does between pelvis and
 * shoulders says little about clocks.
 */
final class ForceColumn {

    /** Grid step, s. */
    static final double STEP_S = 0.02;

    /** Forces above it count as it, either way, m/s². */
    private static final double CEILING = 2.5 * Gravity.STANDARD;

    private double[] grid = new double[256];
    private int bin;
    private double held;
    private double before;
    private double beforeS;
    private int next;

    /** How many steps of the grid a time is. */
    static int steps(double seconds) {
        return (int) Math.round(seconds / STEP_S);
    }

    /** The middle of a step, s from the stream's first sample. */
    static double timeS(int place) {
        return (place + 0.5) * STEP_S;
    }

    /** Vertical force less 1 g at STEP_S/2, 3·STEP_S/2, and so on from the stream's first sample, m/s². */
    static double[] of(SensorStream stream, OrientationTrack track) {
        ForceColumn column = new ForceColumn();
        column.add(stream, track);
        return column.part(0, column.size());
    }

    /** Adds what the samples that were not taken yet tell; the stream begins with those that were. */
    void add(SensorStream stream, OrientationTrack track) {
        SampleCursor sample = stream.cursor();
        for (; next < track.size(); next++) {
            sample.goTo(next);
            double now = vertical(sample, track.at(next));
            if (next > 0) {
                add(beforeS, sample.time(), now);
            }
            before = now;
            beforeS = sample.time();
        }
    }

    private void add(double start, double end, double now) {
        double at = start;
        double value = before;
        while (end >= (bin + 1) * STEP_S) {
            double edge = (bin + 1) * STEP_S;
            double part = end > start ? (edge - start) / (end - start) : 1;
            double atEdge = before + part * (now - before);
            held += (edge - at) * (value + atEdge) / 2;
            put(held / STEP_S);
            held = 0;
            at = edge;
            value = atEdge;
        }
        held += (end - at) * (value + now) / 2;
    }

    private void put(double value) {
        if (bin == grid.length) {
            grid = Arrays.copyOf(grid, grid.length + grid.length / 2);
        }
        grid[bin++] = value;
    }

    /** Number of grid values so far. */
    int size() {
        return bin;
    }

    /** The values from one to another (exclusive). */
    double[] part(int from, int to) {
        return Arrays.copyOfRange(grid, from, to);
    }

    private static double vertical(SampleCursor sample, Quaternion row) {
        double w = row.w();
        double x = row.x();
        double y = row.y();
        double z = row.z();
        double f = 2 * (x * z - w * y) * sample.force(0)
                + 2 * (y * z + w * x) * sample.force(1)
                + (1 - 2 * (x * x + y * y)) * sample.force(2);
        return Math.max(-CEILING, Math.min(CEILING, f)) - Gravity.STANDARD;
    }
}

package evenfall.ingest.recording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One sensor's samples in columns: time, specific force and turn rate, in the sensor's own axes.
 *
 * <p>Times are seconds from the first sample on the sensor's own clock and never decrease. Acceleration is specific
 * force in m/s² (+9.81 upward at rest), turn rate is in rad/s. No sample is NaN or infinite. A stream holds at least
 * one sample and does not change.
 */
public final class SensorStream {

    /** A pause longer than this many sample intervals is a gap. */
    public static final double GAP_INTERVALS = 2.5;

    private final int size;
    private final double[] time;
    private final float[][] columns;
    private final BitSet clippedAcceleration;
    private final BitSet clippedTurnRate;
    private final double clockStartS;
    private final double rateHz;
    private final List<Gap> gaps;
    private final OptionalDouble accelerationRange;
    private final OptionalDouble turnRateRange;
    private final int turnSense;

    private SensorStream(Builder builder) {
        this.size = builder.size;
        this.clockStartS = builder.time[0];
        this.time = Arrays.copyOf(builder.time, size);
        for (int i = 0; i < size; i++) {
            time[i] -= clockStartS;
        }
        this.columns = new float[6][];
        for (int c = 0; c < 6; c++) {
            columns[c] = Arrays.copyOf(builder.columns[c], size);
        }
        this.clippedAcceleration = (BitSet) builder.clippedAcceleration.clone();
        this.clippedTurnRate = (BitSet) builder.clippedTurnRate.clone();
        this.accelerationRange = builder.accelerationRange;
        this.turnRateRange = builder.turnRateRange;
        double interval = SampleInterval.of(time);
        this.rateHz = interval > 0 ? 1 / interval : 0;
        this.gaps = findGaps(time, rateHz);
        this.turnSense = 1;
    }

    private SensorStream(SensorStream other, int turnSense) {
        this.size = other.size;
        this.clockStartS = other.clockStartS;
        this.time = other.time;
        this.columns = other.columns;
        this.clippedAcceleration = other.clippedAcceleration;
        this.clippedTurnRate = other.clippedTurnRate;
        this.accelerationRange = other.accelerationRange;
        this.turnRateRange = other.turnRateRange;
        this.rateHz = other.rateHz;
        this.gaps = other.gaps;
        this.turnSense = turnSense;
    }

    /** The same stream with every turn rate negated, for a gyroscope that turns the other way; shares the samples. */
    public SensorStream withTurnRateReversed() {
        return new SensorStream(this, -turnSense);
    }

    /** Number of samples, at least 1. */
    public int size() {
        return size;
    }

    /** Time of sample {@code i}, s from the first sample. */
    public double time(int i) {
        return time[i];
    }

    /** Specific force along the sensor's x, m/s². */
    public double ax(int i) {
        return columns[0][i];
    }

    /** Specific force along the sensor's y, m/s². */
    public double ay(int i) {
        return columns[1][i];
    }

    /** Specific force along the sensor's z, m/s². */
    public double az(int i) {
        return columns[2][i];
    }

    /** Turn rate about the sensor's x, rad/s. */
    public double gx(int i) {
        return turnSense * columns[3][i];
    }

    /** Turn rate about the sensor's y, rad/s. */
    public double gy(int i) {
        return turnSense * columns[4][i];
    }

    /** Turn rate about the sensor's z, rad/s. */
    public double gz(int i) {
        return turnSense * columns[5][i];
    }

    /** Whether an accelerometer axis stood at full scale in sample {@code i}. */
    public boolean accelerationClipped(int i) {
        return clippedAcceleration.get(i);
    }

    /** Whether a gyroscope axis stood at full scale in sample {@code i}. */
    public boolean turnRateClipped(int i) {
        return clippedTurnRate.get(i);
    }

    /** What the sensor's clock showed at the first sample, s. */
    public double clockStartS() {
        return clockStartS;
    }

    /** Last minus first time stamp, s, gaps included. */
    public double durationS() {
        return time[size - 1];
    }

    /** True rate between gaps, Hz: one over the usual sample interval; 0 for a single sample. */
    public double rateHz() {
        return rateHz;
    }

    /** Where time is missing, in order. */
    public List<Gap> gaps() {
        return gaps;
    }

    /** Where the accelerometer clips, m/s², if stated or seen. */
    public OptionalDouble accelerationRange() {
        return accelerationRange;
    }

    /** Where the gyroscope clips, rad/s, if stated or seen. */
    public OptionalDouble turnRateRange() {
        return turnRateRange;
    }

    /** Index of the last sample at or before {@code timeS}; -1 if there is none. */
    public int indexAtOrBefore(double timeS) {
        int found = Arrays.binarySearch(time, timeS);
        if (found < 0) {
            return -found - 2;
        }
        while (found + 1 < size && time[found + 1] == timeS) {
            found++;
        }
        return found;
    }

    private static List<Gap> findGaps(double[] time, double rateHz) {
        List<Gap> gaps = new ArrayList<>();
        double limit = GAP_INTERVALS / rateHz;
        for (int i = 0; i + 1 < time.length; i++) {
            if (time[i + 1] - time[i] > limit) {
                gaps.add(new Gap(i, time[i], time[i + 1]));
            }
        }
        return List.copyOf(gaps);
    }

    /** Collects samples in order of time; grows as needed. Not safe for use from several threads. */
    public static final class Builder {

        private double[] time = new double[1024];
        private final float[][] columns = new float[6][1024];
        private final BitSet clippedAcceleration = new BitSet();
        private final BitSet clippedTurnRate = new BitSet();
        private OptionalDouble accelerationRange = OptionalDouble.empty();
        private OptionalDouble turnRateRange = OptionalDouble.empty();
        private int size;

        /**
         * Adds a sample.
         *
         * @param timeS the sensor's clock, s; not before the last one's
         * @param ax specific force, m/s², and so on; rates in rad/s
         * @throws IllegalArgumentException if time runs backward or a value is not finite
         */
        public Builder add(double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
            if (!Double.isFinite(timeS) || (size > 0 && timeS < time[size - 1])) {
                throw new IllegalArgumentException("time " + timeS + " s does not follow the sample before it");
            }
            if (!Double.isFinite(ax + ay + az + gx + gy + gz)) {
                throw new IllegalArgumentException("a value at " + timeS + " s is not a number");
            }
            if (size == time.length) {
                grow();
            }
            time[size] = timeS;
            columns[0][size] = (float) ax;
            columns[1][size] = (float) ay;
            columns[2][size] = (float) az;
            columns[3][size] = (float) gx;
            columns[4][size] = (float) gy;
            columns[5][size] = (float) gz;
            size++;
            return this;
        }

        /** States where the accelerometer clips, m/s². */
        public Builder accelerationRange(double range) {
            accelerationRange = OptionalDouble.of(range);
            return this;
        }

        /** States where the gyroscope clips, rad/s. */
        public Builder turnRateRange(double range) {
            turnRateRange = OptionalDouble.of(range);
            return this;
        }

        /** Marks the accelerometer of sample {@code i} as clipped. */
        public Builder clipAcceleration(int i) {
            clippedAcceleration.set(i);
            return this;
        }

        /** Marks the gyroscope of sample {@code i} as clipped. */
        public Builder clipTurnRate(int i) {
            clippedTurnRate.set(i);
            return this;
        }

        /** Samples so far. */
        public int size() {
            return size;
        }

        /**
         * The finished stream; the builder may go on being used.
         *
         * @throws IllegalArgumentException if there is no sample
         */
        public SensorStream build() {
            if (size == 0) {
                throw new IllegalArgumentException("a stream needs at least one sample");
            }
            return new SensorStream(this);
        }

        private void grow() {
            int capacity = time.length + (time.length >> 1);
            time = Arrays.copyOf(time, capacity);
            for (int c = 0; c < 6; c++) {
                columns[c] = Arrays.copyOf(columns[c], capacity);
            }
        }
    }
}

package evenfall.ingest.recording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One sensor's samples in columns: time, specific force and turn rate, in the sensor's own axes.
 *
 * <p>Times are seconds from the first sample on the sensor's own clock and never decrease. Acceleration is specific
 * force in m/s² (+9.81 upward at rest), turn rate is in rad/s. No sample is NaN or infinite. A stream holds at least
 * one sample and does not change.
 *
 * <p>A sample takes 28 bytes outside the Java heap: values are kept as 32-bit floats, times to a tenth of a microsecond.
 */
public final class SensorStream {

    /** A pause longer than this many sample intervals is a gap; before or after samples that came together, for each of them. */
    public static final double GAP_INTERVALS = 2.5;

    /** A step longer than this many intervals has lost a sample, if it is no gap. */
    public static final double LOST_INTERVALS = 1.5;

    private final SampleColumns samples;
    private final BitSet clippedAcceleration;
    private final BitSet clippedTurnRate;
    private final double clockStartS;
    private final double rateHz;
    private final List<Gap> gaps;
    private final OptionalDouble accelerationRange;
    private final OptionalDouble turnRateRange;
    private final int[] turnSense;

    private SensorStream(Builder builder) {
        this.samples = builder.samples.snapshot();
        this.clockStartS = builder.clockStartS;
        this.clippedAcceleration = (BitSet) builder.clippedAcceleration.clone();
        this.clippedTurnRate = (BitSet) builder.clippedTurnRate.clone();
        this.accelerationRange = builder.accelerationRange;
        this.turnRateRange = builder.turnRateRange;
        double interval = SampleInterval.of(samples.size(), samples::time);
        this.rateHz = interval > 0 ? 1 / interval : 0;
        List<Gap> found = new ArrayList<>();
        findGaps(samples, 1, rateHz, found);
        this.gaps = List.copyOf(found);
        this.turnSense = new int[] {1, 1, 1};
    }

    private SensorStream(Builder builder, Growth growth) {
        this.samples = builder.samples.snapshot();
        this.clockStartS = builder.clockStartS;
        this.clippedAcceleration = growth.acceleration().clipped();
        this.clippedTurnRate = growth.turnRate().clipped();
        this.accelerationRange = growth.acceleration().range();
        this.turnRateRange = growth.turnRate().range();
        this.rateHz = growth.rateHz();
        this.gaps = growth.gaps();
        this.turnSense = new int[] {1, 1, 1};
    }

    private SensorStream(SensorStream other, int[] turnSense) {
        this.samples = other.samples;
        this.clockStartS = other.clockStartS;
        this.clippedAcceleration = other.clippedAcceleration;
        this.clippedTurnRate = other.clippedTurnRate;
        this.accelerationRange = other.accelerationRange;
        this.turnRateRange = other.turnRateRange;
        this.rateHz = other.rateHz;
        this.gaps = other.gaps;
        this.turnSense = turnSense;
    }

    /**
     * The same stream with the turn rates about some axes negated, for a gyroscope that turns the other way about them;
     * shares the samples.
     */
    public SensorStream withTurnRateReversed(boolean x, boolean y, boolean z) {
        return new SensorStream(this, new int[] {
            x ? -turnSense[0] : turnSense[0], y ? -turnSense[1] : turnSense[1], z ? -turnSense[2] : turnSense[2]
        });
    }

    /** Number of samples, at least 1. */
    public int size() {
        return samples.size();
    }

    /** Time of sample {@code i}, s from the first sample. */
    public double time(int i) {
        return samples.time(i);
    }

    /** Specific force along the sensor's x, m/s². */
    public double ax(int i) {
        return samples.value(0, i);
    }

    /** Specific force along the sensor's y, m/s². */
    public double ay(int i) {
        return samples.value(1, i);
    }

    /** Specific force along the sensor's z, m/s². */
    public double az(int i) {
        return samples.value(2, i);
    }

    /** Resultant of the specific force, m/s². */
    public double resultant(int i) {
        double x = ax(i);
        double y = ay(i);
        double z = az(i);
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Turn rate about the sensor's x, rad/s. */
    public double gx(int i) {
        return turnSense[0] * samples.value(3, i);
    }

    /** Turn rate about the sensor's y, rad/s. */
    public double gy(int i) {
        return turnSense[1] * samples.value(4, i);
    }

    /** Turn rate about the sensor's z, rad/s. */
    public double gz(int i) {
        return turnSense[2] * samples.value(5, i);
    }

    /**
     * Copies values along or about one axis, which is quicker than asking for them one by one.
     *
     * @param axis 0 to 2 for the specific force along the sensor's x, y, z, m/s²; 3 to 5 for the turn rate, rad/s
     * @param from index of the first sample
     * @return how many were copied: as many as there are and fit
     */
    public int readAxis(int axis, int from, float[] into) {
        int count = samples.readValues(axis, from, into);
        if (axis >= 3 && turnSense[axis - 3] < 0) {
            for (int i = 0; i < count; i++) {
                into[i] = -into[i];
            }
        }
        return count;
    }

    /** Copies times, s from the first sample, likewise. */
    public int readTimes(int from, double[] into) {
        return samples.readTimes(from, into);
    }

    /** Goes along the samples, which is quicker than asking for each of their values. */
    public SampleCursor cursor() {
        return new SampleCursor(this);
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
        return samples.time(samples.size() - 1);
    }

    /** True rate between gaps, Hz: one over the usual sample interval; 0 for a single sample. */
    public double rateHz() {
        return rateHz;
    }

    /** Where time is missing, in order. */
    public List<Gap> gaps() {
        return gaps;
    }

    /**
     * Whether a gap reaches into a stretch of time, s.
     *
     * @throws IllegalArgumentException if it ends before it begins
     */
    public boolean hasGapWithin(double fromS, double toS) {
        if (fromS > toS) {
            throw new IllegalArgumentException("from " + fromS + " s to " + toS + " s before it");
        }
        for (Gap gap : gaps) {
            if (gap.endS() > fromS && gap.startS() < toS) {
                return true;
            }
        }
        return false;
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
        return samples.indexAtOrBefore(timeS);
    }

    /**
     * Adds the gaps that end at sample {@code from} (at least 1) or later. Samples handed over together, with one stamp, are
     * no gap: by the way stamps are given their pause lies before or after them, so the larger of both packets counts.
     */
    static void findGaps(SampleColumns samples, int from, double rateHz, List<Gap> into) {
        double limit = GAP_INTERVALS / rateHz;
        double before = samples.time(from - 1);
        int together = from - packetStart(samples, from - 1);
        int next;
        for (int i = from; i < samples.size(); i = next) {
            double time = samples.time(i);
            next = i + 1;
            while (next < samples.size() && samples.time(next) == time) {
                next++;
            }
            int ahead = next - i;
            if (time - before > Math.max(together, ahead) * limit) {
                into.add(new Gap(i - 1, before, time));
            }
            together = time == before ? together + ahead : ahead;
            before = time;
        }
    }

    /** The first of the samples that bear the stamp of sample {@code i}. */
    static int packetStart(SampleColumns samples, int i) {
        int start = i;
        while (start > 0 && samples.time(start - 1) == samples.time(i)) {
            start--;
        }
        return start;
    }

    /** Collects samples in order of time; grows as needed. Not safe for use from several threads. */
    public static final class Builder {

        private final SampleColumns samples = new SampleColumns();
        private final BitSet clippedAcceleration = new BitSet();
        private final BitSet clippedTurnRate = new BitSet();
        private double clockStartS;
        private double lastTimeS = Double.NEGATIVE_INFINITY;
        private OptionalDouble accelerationRange = OptionalDouble.empty();
        private OptionalDouble turnRateRange = OptionalDouble.empty();
        private @Nullable Growth growth;

        /**
         * Adds a sample.
         *
         * @param timeS the sensor's clock, s; not before the last one's
         * @param ax specific force, m/s², and so on; rates in rad/s
         * @throws IllegalArgumentException if time runs backward or a value is not finite
         */
        public Builder add(double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
            if (!(timeS >= lastTimeS && timeS < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("time " + timeS + " s does not follow the sample before it");
            }
            if (!Float.isFinite((float) (ax + ay + az + gx + gy + gz))) {
                throw new IllegalArgumentException("a value at " + timeS + " s is not a number");
            }
            if (samples.size() == 0) {
                clockStartS = timeS;
            }
            lastTimeS = timeS;
            samples.add(timeS - clockStartS, ax, ay, az, gx, gy, gz);
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

        /**
         * Marks the samples so far in which a sensor stood at full scale: from 0.98 of a stated range, else as the samples
         * themselves show it (end values of the number grid, extremes that repeat). What is seen becomes the range.
         */
        public Builder findClipping() {
            if (samples.size() > 0) {
                FullScale acceleration = FullScale.of(samples, 0, accelerationRange);
                clippedAcceleration.or(acceleration.clipped());
                accelerationRange = acceleration.range();
                FullScale turnRate = FullScale.of(samples, 3, turnRateRange);
                clippedTurnRate.or(turnRate.clipped());
                turnRateRange = turnRate.range();
            }
            return this;
        }

        /** Samples so far. */
        public int size() {
            return samples.size();
        }

        /**
         * The finished stream; the builder may go on being used.
         *
         * @throws IllegalArgumentException if there is no sample
         */
        public SensorStream build() {
            if (samples.size() == 0) {
                throw new IllegalArgumentException("a stream needs at least one sample");
            }
            return new SensorStream(this);
        }

        /**
         * The stream of the samples so far, made in a time that does not grow with their number, for asking again and again
         * while samples come. Clipping is found of itself (what was marked by hand does not show) and the rate is that of all
         * but the last tenth of the samples at the least.
         *
         * @throws IllegalArgumentException if there is no sample
         */
        public SensorStream soFar() {
            if (samples.size() == 0) {
                throw new IllegalArgumentException("a stream needs at least one sample");
            }
            Growth known = growth;
            if (known == null) {
                known = new Growth(accelerationRange, turnRateRange);
                growth = known;
            }
            known.lookAt(samples);
            return new SensorStream(this, known);
        }
    }
}

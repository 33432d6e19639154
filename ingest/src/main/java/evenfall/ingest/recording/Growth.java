package evenfall.ingest.recording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is known of samples that still come: their rate, gaps, and where they clipped. Each look goes over the new samples
 * alone, but for what they may have changed: the rate is taken anew whenever the samples are a tenth more, full scale when a
 * new sample is as large as any of its axis so far, which grows rare.
 */
final class Growth {

    private static final double RATE_ANEW = 1.1;
    /** A rate that changes by less leaves the gaps as they are. */
    private static final double SAME_RATE = 0.01;
    /** What stands at full scale is an extreme of its axis; where the range is stated, almost. */
    private static final double AT_EXTREME = FullScale.STATED_SHARE;

    private final OptionalDouble accelerationRange;
    private final OptionalDouble turnRateRange;
    private final List<Gap> found = new ArrayList<>();
    private List<Gap> gaps = List.of();
    private Clipping acceleration;
    private Clipping turnRate;
    /** Largest size along each of the six axes. */
    private final float[] largest = new float[6];

    private int size;
    private int rateSize;
    private double rateHz;
    private double gapRateHz;

    /** Nothing was seen; ranges where they are stated. */
    Growth(OptionalDouble accelerationRange, OptionalDouble turnRateRange) {
        this.accelerationRange = accelerationRange;
        this.turnRateRange = turnRateRange;
        this.acceleration = new Clipping(new BitSet(), accelerationRange);
        this.turnRate = new Clipping(new BitSet(), turnRateRange);
    }

    /**
     * Samples at full scale.
     *
     * @param clipped which; not to be changed
     * @param range full scale, stated or seen
     */
    record Clipping(BitSet clipped, OptionalDouble range) {}

    /** Looks at the samples that came since the last look. */
    void lookAt(SampleColumns samples) {
        // More of the last packet may have come, and how large it is tells whether the pause before it is a gap.
        int from = size == 0 ? 1 : Math.max(1, SensorStream.packetStart(samples, size - 1));
        if (rateSize == 0 || samples.size() > RATE_ANEW * rateSize) {
            rateSize = samples.size();
            double interval = SampleInterval.of(rateSize, samples::time);
            rateHz = interval > 0 ? 1 / interval : 0;
            if (Math.abs(rateHz - gapRateHz) > SAME_RATE * gapRateHz) {
                gapRateHz = rateHz;
                found.clear();
                gaps = List.of();
                from = 1;
            }
        }
        int first = from;
        found.removeIf(gap -> gap.before() >= first - 1);
        SensorStream.findGaps(samples, from, gapRateHz, found);
        if (!found.equals(gaps)) {
            gaps = List.copyOf(found);
        }
        findClipping(samples);
        size = samples.size();
    }

    private void findClipping(SampleColumns samples) {
        if (extremes(samples, 0, FullScale.LOWEST_ACCELERATION)) {
            FullScale scale = FullScale.of(samples, 0, accelerationRange);
            acceleration = new Clipping(scale.clipped(), scale.range());
        }
        if (extremes(samples, 3, FullScale.LOWEST_TURN_RATE)) {
            FullScale scale = FullScale.of(samples, 3, turnRateRange);
            turnRate = new Clipping(scale.clipped(), scale.range());
        }
    }

    /** Whether a new sample may stand at full scale, or change what does. */
    private boolean extremes(SampleColumns samples, int firstColumn, double lowest) {
        float ofAll = 0;
        boolean[] extreme = new boolean[3];
        for (int axis = 0; axis < 3; axis++) {
            int column = firstColumn + axis;
            float most = 0;
            for (int i = size; i < samples.size(); i++) {
                most = Math.max(most, Math.abs(samples.value(column, i)));
            }
            extreme[axis] = most > lowest && most >= AT_EXTREME * largest[column];
            largest[column] = Math.max(largest[column], most);
            ofAll = Math.max(ofAll, largest[column]);
        }
        boolean any = false;
        for (int axis = 0; axis < 3; axis++) {
            any |= extreme[axis] && largest[firstColumn + axis] >= FullScale.LIKE_OTHER_AXES * ofAll;
        }
        return any;
    }

    double rateHz() {
        return rateHz;
    }

    List<Gap> gaps() {
        return gaps;
    }

    Clipping acceleration() {
        return acceleration;
    }

    Clipping turnRate() {
        return turnRate;
    }
}

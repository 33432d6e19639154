package evenfall.ingest.recording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is known of samples that still come: their rate, gaps, and where they clipped. Each look goes over the new samples
 * alone, but for what they may have changed: the rate is taken anew whenever the samples are a tenth more, full scale when a
 * new sample comes near the largest so far.
 */
final class Growth {

    private static final double RATE_ANEW = 1.1;
    /** A rate that changes by less leaves the gaps as they are. */
    private static final double SAME_RATE = 0.01;
    /** Nothing below this share of the largest value of any axis stands at full scale. */
    private static final double NEAR_LARGEST = FullScale.LIKE_OTHER_AXES;

    private final OptionalDouble accelerationRange;
    private final OptionalDouble turnRateRange;
    private final List<Gap> found = new ArrayList<>();
    private List<Gap> gaps = List.of();
    private Clipping acceleration;
    private Clipping turnRate;
    private float largestAcceleration;
    private float largestTurnRate;
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
        if (rateSize == 0 || samples.size() > RATE_ANEW * rateSize) {
            rateSize = samples.size();
            double interval = SampleInterval.of(rateSize, samples::time);
            rateHz = interval > 0 ? 1 / interval : 0;
            if (Math.abs(rateHz - gapRateHz) > SAME_RATE * gapRateHz) {
                gapRateHz = rateHz;
                found.clear();
                gaps = List.of();
                findGaps(samples, 1);
            }
        }
        findGaps(samples, Math.max(1, size));
        findClipping(samples);
        size = samples.size();
    }

    private void findGaps(SampleColumns samples, int from) {
        int known = found.size();
        double limit = SensorStream.GAP_INTERVALS / gapRateHz;
        double before = samples.time(from - 1);
        for (int i = from; i < samples.size(); i++) {
            double time = samples.time(i);
            boolean knownYet = !found.isEmpty() && found.get(found.size() - 1).before() >= i - 1;
            if (time - before > limit && !knownYet) {
                found.add(new Gap(i - 1, before, time));
            }
            before = time;
        }
        if (found.size() != known) {
            gaps = List.copyOf(found);
        }
    }

    private void findClipping(SampleColumns samples) {
        float nowAcceleration = largest(samples, 0);
        float nowTurnRate = largest(samples, 3);
        largestAcceleration = Math.max(largestAcceleration, nowAcceleration);
        largestTurnRate = Math.max(largestTurnRate, nowTurnRate);
        if (nowAcceleration >= NEAR_LARGEST * largestAcceleration && nowAcceleration > FullScale.LOWEST_ACCELERATION) {
            FullScale scale = FullScale.of(samples, 0, accelerationRange);
            acceleration = new Clipping(scale.clipped(), scale.range());
        }
        if (nowTurnRate >= NEAR_LARGEST * largestTurnRate && nowTurnRate > FullScale.LOWEST_TURN_RATE) {
            FullScale scale = FullScale.of(samples, 3, turnRateRange);
            turnRate = new Clipping(scale.clipped(), scale.range());
        }
    }

    /** The largest size of the new samples along any of three axes. */
    private float largest(SampleColumns samples, int firstColumn) {
        float largest = 0;
        for (int column = firstColumn; column < firstColumn + 3; column++) {
            for (int i = size; i < samples.size(); i++) {
                largest = Math.max(largest, Math.abs(samples.value(column, i)));
            }
        }
        return largest;
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

package evenfall.ingest.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;

/** The steps of a clock, against a general-purpose statistics library and steps told one by one. */
class StepsTest {

    @Test
    void manyBlocksAreGoneOverWithoutASeam() {
        Random random = new Random(11);
        double[] time = new double[20_000];
        for (int i = 1; i < time.length; i++) {
            // Rounded to the clock's own tick, a tenth of a microsecond.
            time[i] = time[i - 1] + Math.round((0.005 + 0.0001 * random.nextGaussian()) * 1e7) / 1e7;
        }
        // One repeated and one lost sample on each side of a block's end.
        shift(time, 4095, -(time[4095] - time[4094]));
        shift(time, 8190, 0.004);
        SensorStream stream = stream(time);
        Steps steps = Steps.of(stream);

        double[] step = new double[time.length - 1];
        for (int i = 0; i < step.length; i++) {
            step[i] = stream.time(i + 1) - stream.time(i);
        }
        double interval = 1 / stream.rateHz();
        double[] off = Arrays.stream(step).map(s -> Math.abs(s - interval)).toArray();
        double[] ordinary = Arrays.stream(off).filter(o -> o < 0.5 * interval).toArray();
        assertEquals(Math.sqrt(StatUtils.sumSq(ordinary) / ordinary.length), steps.scatterS(), 1e-12);
        assertEquals(1.4826 * StatUtils.percentile(off, 50), steps.middlingS(), 1e-7);
        assertEquals(1, steps.repeated());
        assertEquals(stream.time(4095), steps.firstRepeatedS());
        assertEquals(1, steps.lost());
        assertEquals(stream.time(8189), steps.firstLostS());
        double worst = StatUtils.max(ordinary);
        int at = (int) Math.round(steps.worstAtS() / 0.005);
        assertTrue(Arrays.stream(step, Math.max(0, at - 100), at + 100)
                .anyMatch(s -> Math.abs(Math.abs(s - interval) - worst) < 1e-12));
    }

    @Test
    void aSingleSampleHasNoSteps() {
        Steps steps = Steps.of(stream(new double[] {0}));
        assertEquals(0, steps.repeated() + steps.lost());
        assertEquals(0, steps.scatterS());
    }

    private static void shift(double[] time, int from, double by) {
        for (int i = from; i < time.length; i++) {
            time[i] += by;
        }
    }

    private static SensorStream stream(double[] time) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (double t : time) {
            builder.add(t, 0, 0, 9.8, 0, 0, 0);
        }
        return builder.build();
    }
}

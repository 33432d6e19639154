package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is known here is when each sample truly was taken; it must be put there. */
class SensorClocksTest {

    private static final int SENSOR = 'P';
    private static final double INTERVAL_S = 0.005;
    private static final double EPOCH_S = 1.8e9;

    /** An arrival is noted this often at most, s. */
    private static final double NOTED_S = 0.2;

    /** How far off a sensor that started anew may be put: one note of an arrival. */
    private static final double PLACED_S = NOTED_S + INTERVAL_S;

    private final List<Double> placed = new ArrayList<>();
    private final SensorClocks clocks = new SensorClocks((sensor, t, ax, ay, az, gx, gy, gz) -> placed.add(t));
    private double notedS = Double.NEGATIVE_INFINITY;

    @Test
    void aClockThatGoesOnIsLeftAsItIs() {
        speak(0, 10, 100);
        clocks.gone(EPOCH_S + 10);
        speak(40, 50, 100);

        assertThat(clocks.newStarts()).isEmpty();
        assertThat(last()).isCloseTo(150, within(1e-9));
    }

    @Test
    void aSensorThatStartedAnewWhileThePortWasGoneIsPutWhereItsDataArrived() {
        speak(0, 20, 100);
        clocks.gone(EPOCH_S + 20);
        // Power came back at 50 s.
        speak(51, 60, -50);

        assertThat(clocks.newStarts()).hasSize(1);
        assertThat(clocks.newStarts().get(0).clockS()).isCloseTo(151, within(PLACED_S));
        assertThat(last()).isCloseTo(160, within(PLACED_S));
    }

    /** It counts beyond where it was, so that its clock alone shows nothing. */
    @Test
    void aSensorThatStartedAnewLongAgoIsPutWhereItsDataArrivedToo() {
        speak(0, 20, 0);
        clocks.gone(EPOCH_S + 20);
        speak(80, 90, -30);

        assertThat(clocks.newStarts()).hasSize(1);
        assertThat(last()).isCloseTo(90, within(PLACED_S));
    }

    @Test
    void aSensorThatStartsAnewOnItsOwnIsPutWhereItsDataArrived() {
        speak(0, 20, 7);
        speak(23, 30, -22.5);

        assertThat(clocks.newStarts()).hasSize(1);
        assertThat(last()).isCloseTo(37, within(PLACED_S));
    }

    /** The first one's battery was empty; the spare one has run for an hour. */
    @Test
    void aSpareSensorIsPutWhereItsDataArrives() {
        speak(0, 20, 0);
        clocks.gone(EPOCH_S + 20);
        speak(50, 60, 3600);

        assertThat(clocks.newStarts()).hasSize(1);
        assertThat(last()).isCloseTo(60, within(PLACED_S));
    }

    /** Twice as fast as it was: clocks run ahead of arrivals, over a loss as before it. */
    @Test
    void aRehearsalAtDoubleSpeedIsNoNewStart() {
        for (int i = 0; i < 1000; i++) {
            if (i == 500) {
                clocks.gone(EPOCH_S + i * 0.2);
            }
            int arrived = i < 500 ? i : i + 50;
            clocks.arrived(EPOCH_S + arrived * 0.2);
            clocks.sample(SENSOR, arrived * 0.4, 0, 0, 9.8, 0, 0, 0);
        }

        assertThat(clocks.newStarts()).isEmpty();
    }

    /** A receiver that keeps samples back and sends them all later has lost nothing. */
    @Test
    void samplesThatWereHeldUpStayWhereTheirClockPutsThem() {
        speak(0, 20, 0);
        clocks.gone(EPOCH_S + 20);
        notedS = 30;
        clocks.arrived(EPOCH_S + 30);
        for (int i = 0; i < 2000; i++) {
            clocks.sample(SENSOR, 20 + i * INTERVAL_S, 0, 0, 9.8, 0, 0, 0);
        }

        assertThat(clocks.newStarts()).isEmpty();
        assertThat(last()).isCloseTo(20 + 1999 * INTERVAL_S, within(1e-9));
    }

    /** 200 ppm is four times what a poor crystal does; common practice, no source. */
    @Test
    void twoHoursOfADriftingClockAreNoNewStart() {
        for (int i = 0; i < 7200 * 5; i++) {
            double t = i * NOTED_S;
            clocks.arrived(EPOCH_S + t);
            clocks.sample(SENSOR, t * (1 + 2e-4), 0, 0, 9.8, 0, 0, 0);
            if (i % 3000 == 2999) {
                clocks.gone(EPOCH_S + t);
            }
        }

        assertThat(clocks.newStarts()).isEmpty();
        assertThat(last()).isCloseTo((7200 - NOTED_S) * (1 + 2e-4), within(1e-6));
    }

    @Test
    void withoutArrivalsNothingIsTouched() {
        for (double t : new double[] {5, 6, 0.1, 0.2}) {
            clocks.sample(SENSOR, t, 0, 0, 9.8, 0, 0, 0);
        }

        assertThat(placed).containsExactly(5.0, 6.0, 0.1, 0.2);
    }

    private double last() {
        return placed.get(placed.size() - 1);
    }

    /** Samples from one true moment to another, by a clock that shows {@code ahead} more; notes arrivals as the recorder does. */
    private void speak(double fromS, double toS, double ahead) {
        for (double t = fromS; t <= toS + 1e-9; t += INTERVAL_S) {
            if (t - notedS >= NOTED_S) {
                notedS = t;
                clocks.arrived(EPOCH_S + t);
            }
            clocks.sample(SENSOR, t + ahead, 0, 0, 9.8, 0, 0, 0);
        }
    }
}

package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Even samples, unevenly stamped. */
class SampleClockTest {

    private static final double T = 0.005;

    @Test
    void jitterIsSmoothedAndNoTimeIsLost() {
        SplittableRandom random = new SplittableRandom(5);
        SampleClock clock = new SampleClock(T);
        double sum = -T;
        for (int i = 0; i < 20000; i++) {
            double interval = clock.next(i * T + random.nextDouble(-0.0005, 0.0005));
            assertThat(clock.missing()).isZero();
            assertThat(interval).isCloseTo(T, within(0.0002));
            sum += interval;
        }
        assertThat(sum).isCloseTo(19999 * T, within(0.001));
    }

    @Test
    void aClockThatRunsFastIsFollowed() {
        SampleClock clock = new SampleClock(T);
        double sum = -T;
        for (int i = 0; i < 20000; i++) {
            sum += clock.next(i * T * 1.0002);
        }
        assertThat(sum).isCloseTo(19999 * T * 1.0002, within(0.001));
    }

    @Test
    void samplesStampedFourAtOnceGetEvenIntervalsAndNoGap() {
        SampleClock clock = new SampleClock(T);
        double sum = 0;
        for (int i = 0; i < 4000; i++) {
            double interval = clock.next((i / 4) * 4 * T);
            sum += interval + clock.missing();
            if (i > 400) {
                assertThat(interval).isCloseTo(T, within(0.25 * T));
            }
        }
        assertThat(sum).isCloseTo(4000 * T, within(5 * T));
    }

    @Test
    void oneLostSampleGivesItsTimeToTheNext() {
        SampleClock clock = new SampleClock(T);
        for (int i = 0; i < 100; i++) {
            clock.next(i * T);
        }
        assertThat(clock.next(101 * T)).isCloseTo(2 * T, within(1e-9));
        assertThat(clock.missing()).isZero();
        assertThat(clock.next(102 * T)).isCloseTo(T, within(1e-9));
    }

    @Test
    void aGapIsMissingTimeAndNotAnInterval() {
        SampleClock clock = new SampleClock(T);
        for (int i = 0; i < 100; i++) {
            clock.next(i * T);
        }
        assertThat(clock.next(99 * T + 3)).isCloseTo(T, within(1e-9));
        assertThat(clock.missing()).isCloseTo(3 - T, within(1e-9));
        assertThat(clock.next(100 * T + 3)).isCloseTo(T, within(1e-9));
        assertThat(clock.missing()).isZero();
    }
}

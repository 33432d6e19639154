package evenfall.fusion.landing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PeakBetweenSamplesTest {

    private static final int TRIALS = 2000;

    /** Integral of (x²)² over half an interval: the mean square of what lies above is bend² / 320. */
    @Test
    void isThreeTenthsMoreThanTheRootMeanSquareOnAParabola() {
        double squares = 0;
        for (int k = 0; k < TRIALS; k++) {
            double at = (k + 0.5) / TRIALS - 0.5;
            squares += Math.pow(at, 4) / TRIALS;
        }
        assertThat(PeakBetweenSamples.sigma(-1, 0, -1)).isCloseTo(1.3 * Math.sqrt(squares), within(1e-5));
    }

    /** What a pulse of some samples' width hides between them, where the samples may lie anywhere on it. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 6, 10, 30})
    void holdsWhatPulsesHide(double samplesWide) {
        DoubleUnaryOperator pulse = t -> 6 * Math.max(0, Math.cos(Math.PI * t / samplesWide));
        SplittableRandom random = new SplittableRandom(7);
        int one = 0;
        int two = 0;
        for (int k = 0; k < TRIALS; k++) {
            double at = random.nextDouble(-0.5, 0.5);
            double largest = pulse.applyAsDouble(at);
            double sigma = PeakBetweenSamples.sigma(pulse.applyAsDouble(at - 1), largest, pulse.applyAsDouble(at + 1));
            one += 6 - largest <= sigma ? 1 : 0;
            two += 6 - largest <= 2 * sigma ? 1 : 0;
        }
        assertThat(100.0 * one / TRIALS).isBetween(68.0, 80.0);
        assertThat(100.0 * two / TRIALS).isGreaterThan(95);
    }
}

package evenfall.fusion.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A trunk of two stiff parts that rises and sinks while it folds, computed here in closed form: the sensors sit 0.12 and 0.35 m from
 * where the parts meet, behind and above.
 */
class LeverArmsTest {

    private static final double RATE = 200;
    private static final double LASTS_S = 120;
    private static final double SMALL_S = 1e-3;

    /** Folding before rising, with it and after it; late clocks and early ones; biases of a cheap sensor. */
    @ParameterizedTest
    @CsvSource({"0, 0.3, 0, 0", "1.5, 0.3, 40, 0", "-1.5, -0.7, -60, 0", "0.8, 1.2, 0, 0.25", "-0.8, 0, 80, -0.25"})
    void clocksOfATrunkThatFolds_areRightToHalfAMillisecond(double phase, double offsetS, double ppm, double bias) {
        DoubleUnaryOperator rise =
                t -> 0.06 * Math.sin(2.3 * t) + 0.04 * Math.sin(3.7 * t + 1) + 0.02 * Math.sin(0.03 * t * t);
        DoubleUnaryOperator pelvis =
                t -> 0.05 + 0.03 * Math.sin(2.3 * t + phase) + 0.05 * Math.sin(1.7 * t) + 0.03 * Math.sin(4.9 * t);
        DoubleUnaryOperator trunk =
                t -> 0.1 + 0.08 * Math.sin(2.3 * t + phase) + 0.15 * Math.sin(1.7 * t) + 0.05 * Math.sin(4.9 * t + 1);
        TrunkEnd lower = end(t -> t, rise, pelvis, -0.08, -0.12, bias);
        DoubleUnaryOperator clock = t -> (t - offsetS) / (1 + ppm * 1e-6);
        TrunkEnd upper = end(clock, rise, trunk, -0.1, 0.35, -bias);
        ClockMap map = Objects.requireNonNull(ClockFinder.of(lower, upper).map(List.of(500.0)));
        for (double t : new double[] {5, 60, 110}) {
            double truth = t * (1 + ppm * 1e-6) + offsetS;
            assertThat(1000 * (map.toUpperBack(t) - truth)).as("ms at %s s", t).isCloseTo(0, within(0.5));
        }
    }

    /**
     * A sensor on a part that tips forward by an angle.
     *
     * @param trueS the true time at a moment of the sensor's clock, s
     * @param forward how far the sensor sits before the point where the parts meet, m
     * @param above how far above it, m
     * @param bias of its axis that points forward, m/s²
     */
    private static TrunkEnd end(
            DoubleUnaryOperator trueS,
            DoubleUnaryOperator rise,
            DoubleUnaryOperator tip,
            double forward,
            double above,
            double bias) {
        DoubleUnaryOperator height = t -> rise.applyAsDouble(t)
                - forward * Math.sin(tip.applyAsDouble(t))
                + above * Math.cos(tip.applyAsDouble(t));
        int n = (int) (LASTS_S * RATE);
        SensorStream.Builder builder = new SensorStream.Builder();
        float[] wxyz = new float[4 * n];
        for (int i = 0; i < n; i++) {
            double t = trueS.applyAsDouble(i / RATE);
            double angle = tip.applyAsDouble(t);
            double force = Gravity.STANDARD
                    + (height.applyAsDouble(t - SMALL_S)
                                    - 2 * height.applyAsDouble(t)
                                    + height.applyAsDouble(t + SMALL_S))
                            / (SMALL_S * SMALL_S);
            builder.add(i / RATE, -force * Math.sin(angle) + bias, 0, force * Math.cos(angle), 0, 0, 0);
            wxyz[4 * i] = (float) Math.cos(angle / 2);
            wxyz[4 * i + 2] = (float) Math.sin(angle / 2);
        }
        return TrunkEnd.of(builder.build(), new OrientationTrack(wxyz));
    }
}

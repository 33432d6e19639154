package evenfall.fusion.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Integration against worked values: cases H4 and H5 of the reference sheet, computed there with NumPy. */
class ReferenceMotionTest {

    private static final double GRAVITY = 9.80665;
    /** Of the 10 to 50 mg that are to be found, what priors of 25 mg and 0.6 % may hold back. */
    private static final double SIX_FACES_G = 0.0012;

    private static SensorStream upright(double rateHz, int samples, DoubleUnaryOperator forceG) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < samples; i++) {
            double t = i / rateHz;
            builder.add(t, 0, 0, GRAVITY * forceG.applyAsDouble(t), 0, 0, 0);
        }
        return builder.build();
    }

    private static Motion motion(SensorStream stream) {
        return Motion.of(new MotionWindow(
                stream, 0, stream.size(), Quaternion.IDENTITY, 0.01, 0.01, Vector3.ZERO, 0.001, List.of(), List.of()));
    }

    /** Stand, fall freely, brake by half a sine, stand. */
    static double caseH4(double t) {
        double top = 0.55 * Math.PI / 0.4;
        if (t > 1.35 + 1e-9 && t < 1.55 - 1e-9) {
            return top * Math.sin(Math.PI * (t - 1.35) / 0.2);
        }
        return t < 1.0 - 1e-9 || t >= 1.55 - 1e-9 ? 1 : 0;
    }

    @Test
    void speed_ofASyntheticLanding_isCaseH4() {
        Motion motion = motion(upright(200, 511, ReferenceMotionTest::caseH4));

        assertThat(motion.speed(270).z()).isCloseTo(-3.456844, within(2e-6));
        assertThat(motion.speed(310).z()).isCloseTo(-0.002773, within(2e-6));
        // 0.03 m/s of the exact contact speed: half a sample at take-off is lost to sampling.
        assertThat(motion.speed(270).z()).isCloseTo(-3.432327, within(0.03));
        double depth = motion.place(270).z() - motion.place(310).z();
        assertThat(depth).isCloseTo(0.343233, within(0.006));
    }

    @Test
    void impulse_ofAHalfSine_isCaseH5() {
        double[] rates = {100, 200, 400, 1000};
        double[] gained = {2.734340, 2.757494, 2.763274, 2.764891};
        for (int k = 0; k < rates.length; k++) {
            int n = (int) Math.round(0.1 * rates[k]) + 1;
            Motion motion = motion(upright(rates[k], n, t -> 6 * Math.sin(Math.PI * t / 0.1)));
            assertThat(motion.speed(n - 1).z()).as("%s Hz", rates[k]).isCloseTo(gained[k], within(2e-6));
        }
    }

    /** A push of 6 m/s² over a tenth of a second gains 2/π of its product, whatever the stamps of its samples say. */
    @Test
    void stampsThatJitter_changeNoSpeed() {
        SplittableRandom random = new SplittableRandom(6);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 400; i++) {
            double t = i / 400.0;
            double push = t > 0.5 && t < 0.6 ? 6 * Math.sin(Math.PI * (t - 0.5) / 0.1) : 0;
            builder.add(t + random.nextDouble(-0.001, 0.001), 0, 0, GRAVITY + push, 0, 0, 0);
        }

        Motion motion = motion(builder.build());

        assertThat(motion.speed(300).z() - motion.speed(150).z()).isCloseTo(0.6 * 2 / Math.PI, within(0.0005));
    }

    @Test
    void smoother_withBiasAndTiltedStart_findsTheSpeed() {
        // 20 mg of bias on each axis and 3° of wrong start; 2 s of rest before and after one second of motion.
        double start = Math.toRadians(3);
        SensorStream.Builder builder = new SensorStream.Builder();
        double bias = 0.02 * GRAVITY;
        for (int i = 0; i <= 1000; i++) {
            double t = i / 200.0;
            double push = t > 2 && t < 3 ? Math.sin(2 * Math.PI * (t - 2)) : 0;
            builder.add(t, 3 * push + bias, bias, GRAVITY + 5 * push + bias, 0, 0, 0);
        }
        SensorStream stream = builder.build();
        List<MotionWindow.Rest> rests = new ArrayList<>();
        for (int i = 0; i <= 1000; i += 40) {
            if (i <= 400 || i >= 600) {
                rests.add(new MotionWindow.Rest(i, 0.016));
            }
        }
        MotionWindow window = new MotionWindow(
                stream,
                0,
                stream.size(),
                Quaternion.about(Vector3.Y, start),
                Math.toRadians(3),
                0.03,
                Vector3.ZERO,
                0.002,
                rests,
                List.of());

        SmoothedMotion smoothed = new MotionSmoother(List.of(window)).motion(0);

        // Half a period of the push gives 1/π of its amplitude: 0.9549 m/s forward, 1.5915 m/s up.
        assertThat(smoothed.motion().speed(500).x()).isCloseTo(3 / Math.PI, within(0.03));
        assertThat(smoothed.motion().speed(500).z()).isCloseTo(5 / Math.PI, within(0.03));
        assertThat(smoothed.motion().speed(1000).norm()).isLessThan(0.03);
        assertThat(smoothed.at(500).speedUp()).isBetween(0.0005, 0.05);
        assertThat(smoothed.between(200, 500).placeUp()).isPositive();
        assertThat(smoothed.between(500, 200)).isEqualTo(smoothed.between(200, 500));
    }

    /**
     * Case S4: an accelerometer whose six faces read 1.012, 0.985, 1.051 and -0.996, -1.003, -0.973 g has the offsets half their
     * sums and the scales half their differences (the usual six-position calibration, as in IEEE Std 1293, from memory).
     * Here it is turned slowly through the six, and the smoother has to find the same from what rest says.
     */
    @Test
    void smoother_ofASensorTurnedThroughSixFaces_isCaseS4() {
        double[] offset = {0.008, -0.009, 0.039};
        double[] scale = {1.004, 0.994, 1.012};
        double rateHz = 50;
        double rate = Math.toRadians(20);
        SensorStream.Builder builder = new SensorStream.Builder();
        Quaternion pose = Quaternion.IDENTITY;
        int half = (int) Math.round(2 * Math.PI / rate * rateHz);
        List<MotionWindow.Rest> rests = new ArrayList<>();
        for (int i = 0; i <= 2 * half; i++) {
            Vector3 turn = i <= half ? new Vector3(0, rate, 0) : new Vector3(rate, 0, 0);
            pose = i == 0 ? pose : pose.times(Quaternion.fromBodyRate(turn, 1 / rateHz));
            Vector3 f = pose.rotateBack(Vector3.UP);
            builder.add(
                    i / rateHz,
                    GRAVITY * (offset[0] + scale[0] * f.x()),
                    GRAVITY * (offset[1] + scale[1] * f.y()),
                    GRAVITY * (offset[2] + scale[2] * f.z()),
                    turn.x(),
                    turn.y(),
                    turn.z());
            if (i % 10 == 0) {
                rests.add(new MotionWindow.Rest(i, 0.016));
            }
        }
        SensorStream stream = builder.build();
        MotionWindow window = new MotionWindow(
                stream,
                0,
                stream.size(),
                Quaternion.IDENTITY,
                Math.toRadians(3),
                0.03,
                Vector3.ZERO,
                0.002,
                rests,
                List.of());

        Vector3 right = new MotionSmoother(List.of(window))
                .sensorErrors()
                .correctForce(new Vector3(0.5, 0.2, 0.9).times(GRAVITY))
                .times(1 / GRAVITY);

        // The smoother expects smaller errors, and draws its answer towards none by a little.
        assertThat(right.x()).isCloseTo(0.490040, within(SIX_FACES_G));
        assertThat(right.y()).isCloseTo(0.210262, within(SIX_FACES_G));
        assertThat(right.z()).isCloseTo(0.850791, within(SIX_FACES_G));
        assertThat(right.norm()).isCloseTo(1.004088, within(SIX_FACES_G));
    }
}

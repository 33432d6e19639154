package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Rotations;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** All filters over whole streams of a motion that is known in closed form. */
class OrientationEstimatorTest {

    private static final double G = 9.80665;

    @ParameterizedTest
    @EnumSource(
            value = FilterKind.class,
            names = {"LIVE", "MADGWICK", "COMPLEMENTARY"})
    void sampleBySampleAgreesWithTheWholeStreamToTheLastBit(FilterKind kind) {
        SplittableRandom random = new SplittableRandom(41);
        SensorStream.Builder builder = new SensorStream.Builder();
        double t = 100;
        for (int i = 0; i < 5000; i++) {
            t += i % 997 == 996 ? 0.3 : i % 333 == 332 ? 0.0101 : 0.005 + random.nextDouble(-0.0004, 0.0004);
            builder.add(
                    t,
                    random.nextDouble(-30, 30),
                    random.nextDouble(-30, 30),
                    random.nextDouble(-20, 40),
                    random.nextDouble(-9, 9),
                    random.nextDouble(-9, 9),
                    random.nextDouble(-9, 9));
            if (i % 500 > 495) {
                builder.clipTurnRate(i);
            }
        }
        SensorStream stream = builder.build();
        OrientationTrack whole = OrientationEstimator.estimate(stream, kind);
        StreamingEstimator live = new StreamingEstimator(kind, stream.rateHz());
        OrientationTrack.Builder kept = new OrientationTrack.Builder(stream.size());
        for (int i = 0; i < stream.size(); i++) {
            live.add(
                    stream.time(i),
                    stream.ax(i),
                    stream.ay(i),
                    stream.az(i),
                    stream.gx(i),
                    stream.gy(i),
                    stream.gz(i),
                    stream.turnRateClipped(i));
            Quaternion q = live.orientation();
            kept.add(q.w(), q.x(), q.y(), q.z());
        }
        OrientationTrack oneByOne = kept.build();
        for (int i = 0; i < stream.size(); i++) {
            assertThat(oneByOne.at(i)).as("seed 41, sample %d", i).isEqualTo(whole.at(i));
        }
    }

    @ParameterizedTest
    @EnumSource(FilterKind.class)
    void lyingStillInAnyPoseItTellsTheVerticalFromTheFirstSampleOn(FilterKind kind) {
        SplittableRandom random = new SplittableRandom(7);
        for (int draw = 0; draw < 20; draw++) {
            Quaternion pose = Rotations.random(random);
            Motion motion = new Motion(200);
            for (int i = 0; i < 600; i++) {
                motion.add(pose, Vector3.ZERO);
            }
            OrientationTrack track = OrientationEstimator.estimate(motion.stream(), kind);
            for (int i = 0; i < track.size(); i++) {
                assertThat(OrientationError.of(track.at(i), pose).inclinationDegrees())
                        .as("seed 7, draw %d, sample %d", draw, i)
                        .isLessThan(0.25);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(FilterKind.class)
    void aSingleSampleAndTimeThatStandsStillStillGiveATilt(FilterKind kind) {
        SensorStream one = new SensorStream.Builder().add(5, 0, G, 0, 0, 0, 0).build();
        assertThat(OrientationEstimator.estimate(one, kind)
                        .at(0)
                        .rotate(Vector3.Y)
                        .angleTo(Vector3.UP))
                .isLessThan(1e-3);
        SensorStream.Builder still = new SensorStream.Builder();
        for (int i = 0; i < 10; i++) {
            still.add(5, 0, G, 0, 0, 0, 0);
        }
        OrientationTrack track = OrientationEstimator.estimate(still.build(), kind);
        // gradient descent dithers by its step
        assertThat(track.at(9).rotate(Vector3.Y).angleTo(Vector3.UP)).isLessThan(1e-3);
    }

    @ParameterizedTest
    @EnumSource(FilterKind.class)
    void withoutAnyForceItOnlyTurns(FilterKind kind) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 400; i++) {
            builder.add(i * 0.005, 0, 0, 0, 0.5, 0, 0);
        }
        OrientationTrack track = OrientationEstimator.estimate(builder.build(), kind);
        assertThat(track.at(399).angleTo(Quaternion.about(Vector3.X, 1))).isLessThan(1e-5);
    }

    @ParameterizedTest
    @EnumSource(
            value = FilterKind.class,
            names = {"LIVE", "TWO_PASS"})
    void flightAndImpactDoNotTilt(FilterKind kind) {
        // a drop of 0.8 m: 0.4 s without force, then a brake of 8.4 g at its peak that takes exactly that speed away
        Motion motion = new Motion(200);
        Quaternion pose = Quaternion.about(new Vector3(0.3, 0.2, -0.5), 0.7);
        stand(motion, pose, 1200);
        for (int i = 0; i < 80; i++) {
            motion.add(pose, new Vector3(0, 0, -G));
        }
        for (int i = 0; i < 20; i++) {
            double brake = 80 * G / 20 * Math.PI / 2 * Math.sin(Math.PI * (i + 0.5) / 20);
            motion.add(pose, new Vector3(0, 0, brake));
        }
        stand(motion, pose, 600);
        OrientationTrack track = OrientationEstimator.estimate(motion.stream(), kind);
        for (int i = 0; i < track.size(); i++) {
            assertThat(OrientationError.of(track.at(i), pose).inclinationDegrees())
                    .isLessThan(0.02);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FilterKind.class,
            names = {"LIVE", "TWO_PASS"})
    void anImpactThatAlsoPushesSidewaysTiltsLessThanHalfADegree(FilterKind kind) {
        // as above, and the body stops a forward speed of 0.6 m/s that it took up while stepping off, 0.5 s before
        Motion motion = new Motion(200);
        Quaternion pose = Quaternion.about(new Vector3(0.3, 0.2, -0.5), 0.7);
        stand(motion, pose, 1200);
        for (int i = 0; i < 60; i++) {
            motion.add(pose, new Vector3(2, 0, 0));
        }
        for (int i = 0; i < 80; i++) {
            motion.add(pose, new Vector3(0, 0, -G));
        }
        for (int i = 0; i < 20; i++) {
            double shape = Math.PI / 2 * Math.sin(Math.PI * (i + 0.5) / 20);
            motion.add(pose, new Vector3(-6 * shape, 0, 80 * G / 20 * shape));
        }
        stand(motion, pose, 600);
        OrientationTrack track = OrientationEstimator.estimate(motion.stream(), kind);
        for (int i = 0; i < track.size(); i++) {
            assertThat(OrientationError.of(track.at(i), pose).inclinationDegrees())
                    .isLessThan(0.5);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FilterKind.class,
            names = {"LIVE", "TWO_PASS"})
    void clippedForceOfAnImpactDoesNotTilt(FilterKind kind) {
        Quaternion pose = Quaternion.about(new Vector3(0.3, 0.2, -0.5), 0.7);
        Motion motion = new Motion(200);
        motion.range = 4 * G;
        stand(motion, pose, 1200);
        for (int i = 0; i < 80; i++) {
            motion.add(pose, new Vector3(0, 0, -G));
        }
        for (int i = 0; i < 20; i++) {
            motion.add(pose, new Vector3(0, 0, 80 * G / 20 * Math.PI / 2 * Math.sin(Math.PI * (i + 0.5) / 20)));
        }
        stand(motion, pose, 600);
        OrientationTrack track = OrientationEstimator.estimate(motion.stream(), kind);
        for (int i = 0; i < track.size(); i++) {
            assertThat(OrientationError.of(track.at(i), pose).inclinationDegrees())
                    .isLessThan(1);
        }
    }

    @Test
    void aTurnHiddenInALongGapIsFoundAtOnceByTwoPassAndSoonByLive() {
        Quaternion before = Quaternion.about(new Vector3(1, 0.2, 0), 0.4);
        Quaternion after = Quaternion.about(new Vector3(-0.4, 1, 0.3), 1.1).times(before);
        Motion motion = new Motion(200);
        stand(motion, before, 2000);
        motion.skip(5);
        stand(motion, after, 2000);
        SensorStream stream = motion.stream();
        assertThat(stream.gaps()).hasSize(1);
        OrientationTrack looksAhead = OrientationEstimator.estimate(stream, FilterKind.TWO_PASS);
        OrientationTrack live = OrientationEstimator.estimate(stream, FilterKind.LIVE);
        assertThat(OrientationError.of(looksAhead.at(1999), before).inclinationDegrees())
                .isLessThan(2.5);
        assertThat(OrientationError.of(looksAhead.at(2000), after).inclinationDegrees())
                .isLessThan(2.5);
        assertThat(OrientationError.of(live.at(2000 + 200), after).inclinationDegrees())
                .isLessThan(8);
        assertThat(OrientationError.of(live.at(3999), after).inclinationDegrees())
                .isLessThan(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = FilterKind.class,
            names = {"LIVE", "TWO_PASS"})
    void aShortGapInATurnIsBridged(FilterKind kind) {
        Motion motion = new Motion(200);
        List<Quaternion> poses = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            double angle = 0.8 * Math.sin(2 * Math.PI * 0.4 * i / 200);
            Quaternion pose = Quaternion.about(new Vector3(0.2, 1, 0.1), angle);
            if (i % 400 >= 390) {
                motion.skip(1 / 200.0);
                motion.last = pose;
            } else {
                motion.add(pose, Vector3.ZERO);
                poses.add(pose);
            }
        }
        OrientationTrack track = OrientationEstimator.estimate(motion.stream(), kind);
        for (int i = 0; i < track.size(); i++) {
            assertThat(OrientationError.of(track.at(i), poses.get(i)).inclinationDegrees())
                    .as("sample %d", i)
                    .isLessThan(1);
        }
    }

    @Test
    void aBiasIsTakenOutAtRest() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 6000; i++) {
            builder.add(i * 0.005, 0, 0, G, 0.02, -0.015, 0.01);
        }
        OrientationTrack live = OrientationEstimator.estimate(builder.build(), FilterKind.LIVE);
        OrientationTrack looksAhead = OrientationEstimator.estimate(builder.build(), FilterKind.TWO_PASS);
        // without an estimate of the bias the heading would drift by 0.01 rad/s: 14 deg in 25 s
        assertThat(Math.toDegrees(live.at(1000).angleTo(live.at(5999)))).isLessThan(0.6);
        assertThat(Math.toDegrees(looksAhead.at(0).angleTo(looksAhead.at(5999))))
                .isLessThan(0.3);
    }

    @Test
    void liveKnowsNothingOfWhatComes() {
        SplittableRandom random = new SplittableRandom(15);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < 1000; i++) {
            builder.add(i / 128.0, random.nextDouble(5), random.nextDouble(5), G, random.nextDouble(-1, 1), 0, 0);
        }
        OrientationTrack half = OrientationEstimator.estimate(builder.build(), FilterKind.LIVE);
        for (int i = 1000; i < 2000; i++) {
            builder.add(i / 128.0, random.nextDouble(50), -30, G, random.nextDouble(-9, 9), 5, 0);
        }
        OrientationTrack whole = OrientationEstimator.estimate(builder.build(), FilterKind.LIVE);
        for (int i = 0; i < 1000; i++) {
            assertThat(half.at(i).angleTo(whole.at(i))).isLessThan(1e-7);
        }
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        assertThatThrownBy(() -> new StreamingEstimator(FilterKind.TWO_PASS, 200))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StreamingEstimator(FilterKind.LIVE, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> InertialParams.published().withAccelerationTime(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void stand(Motion motion, Quaternion pose, int samples) {
        for (int i = 0; i < samples; i++) {
            motion.add(pose, Vector3.ZERO);
        }
    }

    /** Exact samples of a motion given pose by pose; a gap carries whatever turn lies in it. */
    private static final class Motion {

        private final SensorStream.Builder builder = new SensorStream.Builder();
        private final double interval;
        private double time;
        private double range = Double.POSITIVE_INFINITY;
        private Quaternion last = Quaternion.IDENTITY;
        private boolean seen;

        Motion(double rateHz) {
            interval = 1 / rateHz;
        }

        /** A sample whose turn rate leads from the pose before to this one; acceleration in the world, m/s². */
        void add(Quaternion pose, Vector3 acceleration) {
            Vector3 rate = seen ? last.conjugate().times(pose).rotationVector().times(1 / interval) : Vector3.ZERO;
            Vector3 f = pose.rotateBack(acceleration.plus(new Vector3(0, 0, G)));
            int i = builder.size();
            builder.add(time, clip(f.x()), clip(f.y()), clip(f.z()), rate.x(), rate.y(), rate.z());
            if (Math.abs(f.x()) >= range || Math.abs(f.y()) >= range || Math.abs(f.z()) >= range) {
                builder.clipAcceleration(i);
            }
            last = pose;
            seen = true;
            time += interval;
        }

        void skip(double seconds) {
            time += seconds;
            seen = seconds < 1;
        }

        SensorStream stream() {
            return builder.build();
        }

        private double clip(double value) {
            return Math.max(-range, Math.min(range, value));
        }
    }
}

package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.files.Checksum;
import evenfall.fixtures.files.WireFrames;
import evenfall.fixtures.files.WireText;
import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.motion.MotionScript;
import evenfall.fixtures.motion.Segment;
import evenfall.fixtures.sensor.SensorClock;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorRecorder;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Source: the fixtures, which write both forms of the wire with code of their own. */
class WitnessFramesTest {

    private static final long SEED = 12;
    private static final float RANGE_G = 16;
    private static final float RANGE_DEGREES = 2000;

    /** Half a count, and what 32-bit floats leave of it. */
    private static final double FORCE = 0.51 * RANGE_G / 32768 * 9.80665;

    private static final double TURN = 0.51 * Math.toRadians(RANGE_DEGREES) / 32768;
    private static final double TIME_S = 0.6e-6;

    private final BodyMotion motion = MotionScript.start(2).stand(1).bend().build();
    private final SensorSignals pelvis = SensorRecorder.record(motion, Segment.PELVIS, worn(4), 7);
    private final SensorSignals upperBack = SensorRecorder.record(motion, Segment.UPPER_BACK, worn(5), 8);

    @Test
    void bothSensorsOnOnePortReadAsTheyWereWritten() {
        WireStreams streams = new WireStreams();
        EitherDecoder decoder = new EitherDecoder(streams);
        feed(decoder, frames(1, 2, 0).toByteArray());

        Recording recording = streams.recording("frames").orElseThrow();
        SensorStream back = Objects.requireNonNull(recording.upperBack()).stream();
        assertThat(decoder.counts()).isEqualTo(new WireCounts(pelvis.size() + (long) upperBack.size(), 0, 0, 0));
        assertSame(recording.pelvis().stream(), pelvis);
        assertSame(back, upperBack);
        assertThat(back.accelerationRange().orElseThrow()).isCloseTo(RANGE_G * 9.80665, within(1e-9));
        assertThat(back.turnRateRange().orElseThrow()).isCloseTo(Math.toRadians(RANGE_DEGREES), within(1e-9));
    }

    @Test
    void lossIsToldPerSensor() {
        Heard heard = new Heard();
        FrameDecoder decoder = new FrameDecoder(heard);
        feed(decoder, frames(1, 2, 0.1).toByteArray());

        long given = heard.rows.size();
        long lost = heard.lost.values().stream().mapToLong(Long::longValue).sum();
        // What was lost before the first and after the last sample of a sensor, nobody can know.
        assertThat(given + lost)
                .isBetween(pelvis.size() + upperBack.size() - 8L, pelvis.size() + (long) upperBack.size());
        assertThat((double) lost / given).isBetween(0.06, 0.16);
        assertThat(heard.lost).hasSize(2);
    }

    /** Joining in the middle of the bytes, at every byte of one second. */
    @Test
    void oneMayJoinAnywhere() {
        byte[] bytes = frames(1, 2, 0).toByteArray();
        for (int from = 3000; from < 3200; from++) {
            Heard heard = new Heard();
            FrameDecoder decoder = new FrameDecoder(heard);
            decoder.accept(bytes, from, bytes.length);
            decoder.end();

            assertThat(decoder.counts().bad()).isZero();
            assertThat(heard.lost).isEmpty();
            assertThat(heard.rows.size()).isGreaterThan((bytes.length - from) / 26 - 20);
        }
    }

    @Test
    void textReadsAsItWasWritten() {
        WireStreams streams = new WireStreams();
        EitherDecoder decoder = new EitherDecoder(streams);
        for (String line : WireText.shared(pelvis, upperBack, Checksum.CRC16)) {
            feed(decoder, (line + "\n").getBytes(StandardCharsets.US_ASCII));
        }

        assertThat(decoder.counts()).isEqualTo(new WireCounts(pelvis.size() + (long) upperBack.size(), 0, 0, 0));
        assertThat(streams.size(Place.PELVIS)).isEqualTo(pelvis.size());
    }

    /** Without jitter, which would put the first sample before zero: the wire knows no such time. */
    private static SensorModel worn(long seed) {
        return SensorModel.cheap(200, seed).withClock(new SensorClock(seed * 0.1, 40, 0));
    }

    private ByteArrayOutputStream frames(int placeOfOne, int placeOfOther, double lost) {
        SplittableRandom random = new SplittableRandom(SEED);
        WireFrames one = new WireFrames(0x0A00, placeOfOne, RANGE_G, RANGE_DEGREES, 200);
        WireFrames other = new WireFrames(0x0B00, placeOfOther, RANGE_G, RANGE_DEGREES, 200);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < Math.max(pelvis.size(), upperBack.size()); i++) {
            speak(out, one, pelvis, i, random.nextDouble() < lost);
            speak(out, other, upperBack, i, random.nextDouble() < lost);
        }
        return out;
    }

    private static void speak(
            ByteArrayOutputStream out, WireFrames sensor, SensorSignals signals, int i, boolean isLost) {
        if (i < signals.size()) {
            if (i % 200 == 0) {
                out.writeBytes(sensor.hello(signals.time()[i], "witness"));
            }
            byte[] frame = sensor.sample(signals, i, 65_000 + i);
            out.writeBytes(isLost ? new byte[0] : frame);
        }
    }

    private static void assertSame(SensorStream read, SensorSignals written) {
        assertThat(read.size()).isEqualTo(written.size());
        for (int i = 0; i < written.size(); i++) {
            assertThat(read.clockStartS() + read.time(i)).isCloseTo(written.time()[i], within(TIME_S));
            assertThat(read.ax(i)).isCloseTo(written.acceleration(0)[i], within(FORCE));
            assertThat(read.az(i)).isCloseTo(written.acceleration(2)[i], within(FORCE));
            assertThat(read.gx(i)).isCloseTo(written.turnRate(0)[i], within(TURN));
            assertThat(read.gz(i)).isCloseTo(written.turnRate(2)[i], within(TURN));
        }
    }

    private static void feed(WireDecoder decoder, byte[] bytes) {
        decoder.accept(bytes, 0, bytes.length);
    }
}

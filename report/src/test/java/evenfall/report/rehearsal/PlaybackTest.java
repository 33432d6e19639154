package evenfall.report.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.serial.Port;
import evenfall.ingest.wire.EitherDecoder;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireStreams;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A recording played as its sensors would send it and read as a recorder would. */
class PlaybackTest {

    private static final long SEED = 77;
    private static final int SAMPLES = 8000;

    /** Half a count of 16 bits over 8 g and 500 deg/s, the narrowest full scales that hold the recording. */
    private static final double FORCE = 0.51 * 8 * 9.80665 / 32768;

    private static final double TURN = 0.51 * Math.toRadians(500) / 32768;
    private static final double TIME_S = 0.6e-6;

    private final WireStreams streams = new WireStreams();
    private final EitherDecoder decoder = new EitherDecoder(streams);
    private final Recording recording = recording();

    @ParameterizedTest
    @EnumSource(WireForm.class)
    void whatIsPlayedIsReadBack(WireForm form) {
        feed(all(new Playback(recording, form, Faults.NONE)));
        if (form == WireForm.BINARY_UNPLACED) {
            assertThat(streams.unplaced()).containsExactly(Playback.UNPLACED_PELVIS, Playback.UNPLACED_UPPER_BACK);
            streams.place(Playback.UNPLACED_PELVIS, Place.PELVIS);
            streams.place(Playback.UNPLACED_UPPER_BACK, Place.UPPER_BACK);
        }

        Recording read = streams.recording("the wire").orElseThrow();
        assertThat(decoder.counts()).isEqualTo(new WireCounts(2 * SAMPLES, 0, 0, 0));
        assertSame(read.pelvis().stream(), recording.pelvis().stream());
        assertSame(upperBack(read), upperBack(recording));
    }

    @Test
    void aGapOfTheRecordingIsLossOnTheWire() {
        Recording gap = new Recording(sensor(200, 10, 0.5), null);
        feed(all(new Playback(gap, WireForm.BINARY, Faults.NONE)));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(SAMPLES, 0, 0, 100));
    }

    @ParameterizedTest
    @EnumSource(WireForm.class)
    void faultsAreTheSameForTheSameSeedAndAreFoundByTheReader(WireForm form) {
        Faults faults = new Faults(0.02, 0.01, List.of(new Stretch(10, 12)), List.of(), 5);
        Playback playback = new Playback(recording, form, faults);
        byte[] bytes = all(playback);
        feed(bytes);

        assertThat(all(new Playback(recording, form, faults))).isEqualTo(bytes);
        WireCounts counts = decoder.counts();
        // Two seconds of two sensors at 200 Hz, and 2 % of the other samples and hellos.
        assertThat(playback.lost()).isBetween(1040L, 1180L);
        assertThat(playback.damaged()).isBetween(110L, 200L);
        // Turned bits may make a line end or a 0 and so two pieces of one, or join two.
        assertThat(counts.bad()).isBetween(playback.damaged() - 20, 2 * playback.damaged());
        assertThat(counts.good())
                .isBetween(2 * SAMPLES - playback.lost() - 2 * playback.damaged(), 2 * SAMPLES - playback.lost());
        if (form == WireForm.BINARY) {
            assertThat(counts.good() + counts.lost()).isBetween(2L * SAMPLES - 20, 2L * SAMPLES);
        }
    }

    @Test
    void theHellosComeEverySecond() {
        Recording one = new Recording(sensor(200, 3, 0), null);
        int frames = 0;
        for (byte b : all(new Playback(one, WireForm.BINARY, Faults.NONE))) {
            frames += b == 0 ? 1 : 0;
        }

        assertThat(frames).isEqualTo(SAMPLES + SAMPLES / 200);
    }

    @Test
    void whatIsSaidWhileThePortIsUnpluggedIsLost() throws Exception {
        List<Bench> opened = new ArrayList<>();
        Playback playback = new Playback(recording, WireForm.BINARY, Faults.NONE);
        Player player = new Player(
                playback,
                List.of(new Stretch(5, 8), new Stretch(20, 21)),
                () -> {
                    opened.add(new Bench());
                    return opened.get(opened.size() - 1);
                },
                new Steps());
        Port last = player.play(Progress.NONE);

        assertThat(opened).hasSize(3);
        assertThat(opened).extracting(bench -> bench.closed).containsExactly(true, true, false);
        assertThat(last).isSameAs(opened.get(2));
        for (Bench bench : opened) {
            feed(bench.written.toByteArray());
        }
        // Four seconds of two sensors at 200 Hz, told by the numbering.
        assertThat((double) decoder.counts().lost()).isCloseTo(4 * 2 * 200, within(8.0));
        assertThat(decoder.counts().good() + decoder.counts().lost()).isEqualTo(2 * SAMPLES);
    }

    private static byte[] all(Playback playback) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (double t = 0; !playback.ended(); t += 0.01) {
            bytes.writeBytes(playback.due(t, 1000));
        }
        return bytes.toByteArray();
    }

    private void feed(byte[] bytes) {
        decoder.accept(bytes, 0, bytes.length);
    }

    private static void assertSame(SensorStream read, SensorStream played) {
        assertThat(read.size()).isEqualTo(played.size());
        for (int i = 0; i < played.size(); i++) {
            assertThat(read.clockStartS() + read.time(i))
                    .isCloseTo(played.clockStartS() + played.time(i), within(TIME_S));
            assertThat(read.ax(i)).isCloseTo(played.ax(i), within(FORCE));
            assertThat(read.az(i)).isCloseTo(played.az(i), within(FORCE));
            assertThat(read.gx(i)).isCloseTo(played.gx(i), within(TURN));
            assertThat(read.gz(i)).isCloseTo(played.gz(i), within(TURN));
        }
    }

    private static SensorStream upperBack(Recording recording) {
        return Objects.requireNonNull(recording.upperBack()).stream();
    }

    private static Recording recording() {
        return new Recording(sensor(200, 3.25, 0), sensor(200, 4000.1, 0));
    }

    /** Random force up to 7 g and turn rate up to 400 deg/s, with one pause if asked for. */
    private static SensorRecording sensor(double rateHz, double startS, double pauseS) {
        SplittableRandom random = new SplittableRandom(SEED);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < SAMPLES; i++) {
            builder.add(
                    startS + i / rateHz + (i > SAMPLES / 2 ? pauseS : 0),
                    random.nextDouble(-68, 68),
                    random.nextDouble(-68, 68),
                    random.nextDouble(-68, 68),
                    random.nextDouble(-7, 7),
                    random.nextDouble(-7, 7),
                    random.nextDouble(-7, 7));
        }
        return new SensorRecording("test", builder.build(), null, List.of());
    }

    /** Time goes on by a millisecond whenever it is asked for. */
    private static final class Steps implements Pace {

        private int steps;

        @Override
        public double nowS() {
            return steps++ * 0.001;
        }

        @Override
        public void rest() {}
    }

    private static final class Bench implements Port {

        private final ByteArrayOutputStream written = new ByteArrayOutputStream();
        private boolean closed;

        @Override
        public String name() {
            return "bench";
        }

        @Override
        public int read(byte[] into) {
            return GONE;
        }

        @Override
        public boolean speed(int baud) {
            return false;
        }

        @Override
        public void write(byte[] bytes, int from, int to) {
            assertThat(closed).isFalse();
            written.write(bytes, from, to - from);
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}

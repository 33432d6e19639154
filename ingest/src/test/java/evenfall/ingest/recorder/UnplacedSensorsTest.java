package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.wire.FrameWriter;
import evenfall.ingest.wire.Hello;
import evenfall.ingest.wire.TapWatch.Answer;
import evenfall.ingest.wire.TapWatch.Verdict;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sensors that do not say where they are worn, in the binary form. */
class UnplacedSensorsTest {

    private static final int ONE = 0x0101;
    private static final int OTHER = 0x0202;
    private static final int RATE_HZ = 200;

    @TempDir
    private Path folder;

    @Test
    void whereTheTappedSensorIsIsRememberedWithTheSession() throws Exception {
        FakePort port = new FakePort();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), Clock.systemUTC())) {
            port.send(both(null, null, 5));
            while (recorder.counts().good() < 2 * 5 * RATE_HZ) {
                Thread.sleep(5);
            }
            assertThat(recorder.unplaced()).containsExactly(ONE, OTHER);
            assertThat(recorder.soFar()).isEmpty();
            assertThat(recorder.tapped()).isEqualTo(new Answer(Verdict.TAPPED, OTHER));

            recorder.place(OTHER, Place.PELVIS);
            recorder.place(ONE, Place.UPPER_BACK);

            assertThat(recorder.unplaced()).isEmpty();
            assertThat(recorder.soFar().orElseThrow().pelvis().stream().size()).isEqualTo(5 * RATE_HZ);
        }

        assertThat(Files.readAllLines(folder.resolve("places.csv")))
                .containsExactly("sensor,place", "0202,pelvis", "0101,upper-back");
        Recording recording = KeptRecording.read(folder, Progress.NONE);
        assertThat(recording.pelvis().stream().clockStartS()).isCloseTo(7, within(1e-9));
        assertThat(Objects.requireNonNull(recording.upperBack()).stream().clockStartS())
                .isZero();
    }

    @Test
    void aSessionWithoutPlacesSaysHowToGiveThem() throws IOException {
        Files.write(folder.resolve("port-1.wire"), both(null, null, 1));

        assertThatThrownBy(() -> KeptRecording.read(folder, Progress.NONE))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining("The sensors 0101 and 0202 did not say where")
                .hasMessageContaining("0101,pelvis");

        Files.writeString(folder.resolve("places.csv"), "sensor,place\nrubbish\n0101,pelvis\n");
        Recording recording = KeptRecording.read(folder, Progress.NONE);
        // The one that is left is at the other place.
        assertThat(recording.pelvis().stream().clockStartS()).isZero();
        assertThat(recording.upperBack()).isNotNull();
    }

    @Test
    void aPlaceSaidByAPersonHoldsAgainstTheSensorsOwn() throws IOException {
        Files.write(folder.resolve("port-1.wire"), both(Place.PELVIS, Place.UPPER_BACK, 1));
        Files.writeString(folder.resolve("places.csv"), "sensor,place\n0202,pelvis\n0101,upper-back\n");

        assertThat(KeptRecording.read(folder, Progress.NONE).pelvis().stream().clockStartS())
                .isCloseTo(7, within(1e-9));
    }

    @Test
    void whereASensorClipsIsKnownByItsHello() throws IOException {
        Files.write(folder.resolve("port-1.wire"), both(Place.PELVIS, Place.UPPER_BACK, 1));

        SensorRecording pelvis = KeptRecording.read(folder, Progress.NONE).pelvis();
        assertThat(pelvis.stream().accelerationRange().orElseThrow()).isCloseTo(16 * 9.80665, within(1e-9));
        assertThat(pelvis.stream().turnRateRange().orElseThrow()).isCloseTo(Math.toRadians(2000), within(1e-9));
    }

    /** A kept file holds whatever came before the first hello, more than waits live. */
    @Test
    void aLateHelloGivesAllThatCameBefore() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < 20_000; i++) {
            bytes.writeBytes(FrameWriter.sample(ONE, i, i * 5000L, new short[] {0, 0, 2048, 0, 0, 0}));
        }
        bytes.writeBytes(hello(ONE, null, 20_000 * 5000L));
        Files.write(folder.resolve("port-1.wire"), bytes.toByteArray());

        assertThat(KeptRecording.read(folder, Progress.NONE).pelvis().stream().size())
                .isEqualTo(20_000);
    }

    @Test
    void samplesLostOnTheWayAreAFinding() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < 2000; i++) {
            bytes.writeBytes(i % RATE_HZ == 0 ? hello(ONE, Place.PELVIS, i * 5000L) : new byte[0]);
            boolean sent = i < 1000 || i >= 1100;
            bytes.writeBytes(
                    sent
                            ? FrameWriter.sample(ONE, 65_000 + i, i * 5000L, new short[] {0, 0, 2048, 0, 0, 0})
                            : new byte[0]);
        }
        Files.write(folder.resolve("port-1.wire"), bytes.toByteArray());

        List<Finding> findings =
                KeptRecording.read(folder, Progress.NONE).pelvis().findings();
        Finding lost = findings.stream()
                .filter(finding -> finding.code() == FindingCode.LOST_SAMPLES)
                .findFirst()
                .orElseThrow();
        assertThat(lost.sensor()).isEqualTo(Place.PELVIS);
        assertThat(lost.message()).startsWith("100 of 2000 samples were lost on the way (5.00 %), the first at 5.00 s");
    }

    /** Two sensors; the second is tapped three times from 3 s on. */
    private static byte[] both(@Nullable Place one, @Nullable Place other, int seconds) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < seconds * RATE_HZ; i++) {
            if (i % RATE_HZ == 0) {
                bytes.writeBytes(hello(ONE, one, i * 5000L));
                bytes.writeBytes(hello(OTHER, other, 7_000_000 + i * 5000L));
            }
            boolean tap = i == 700 || i == 800 || i == 900;
            bytes.writeBytes(FrameWriter.sample(ONE, i, i * 5000L, counts(i, 2048)));
            bytes.writeBytes(FrameWriter.sample(OTHER, i, 7_000_000 + i * 5000L, counts(i, tap ? 6000 : 2048)));
        }
        return bytes.toByteArray();
    }

    private static short[] counts(int i, int up) {
        return new short[] {(short) (i % 5), (short) (i % 3), (short) up, (short) (i % 11), 0, 0};
    }

    private static byte[] hello(int sensor, @Nullable Place place, long clockUs) {
        return FrameWriter.hello(new Hello(sensor, place, 16f / 32768, 2000f / 32768, 16, 2000, RATE_HZ, ""), clockUs);
    }
}

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
import evenfall.ingest.serial.FakeBench;
import evenfall.ingest.serial.Link;
import evenfall.ingest.wire.LineWriter;
import evenfall.ingest.wire.WireStreams;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WireRecorderTest {

    private static final Clock CLOCK = Clock.systemUTC();

    @TempDir
    private Path folder;

    @Test
    void bytesAreKeptAsTheyCameAndReadBack() throws Exception {
        FakePort port = new FakePort();
        byte[] sent = lines(Place.PELVIS, 0, 400);
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), CLOCK)) {
            port.send("half a line,3\n");
            port.send(sent);
            port.unplug();
            awaitGone(recorder);
            assertThat(recorder.counts().good()).isEqualTo(400);
            assertThat(recorder.samples(Place.PELVIS)).isEqualTo(400);
            assertThat(recorder.soFar().orElseThrow().pelvis().stream().size()).isEqualTo(400);
            assertThat(recorder.heard().get(0).bytes()).isEqualTo(14 + sent.length);
        }

        byte[] kept = Files.readAllBytes(folder.resolve("port-1.wire"));
        assertThat(new String(kept, StandardCharsets.US_ASCII))
                .isEqualTo("half a line,3\n" + new String(sent, StandardCharsets.US_ASCII));
        Recording recording = KeptRecording.read(folder, Progress.NONE);
        assertThat(recording.pelvis().stream().size()).isEqualTo(400);
        assertThat(recording.pelvis().stream().time(399)).isCloseTo(1.995, within(1e-9));
        assertThat(recording.upperBack()).isNull();
        assertThat(port.closed()).isTrue();
    }

    @Test
    void aRecordingThatWasEndedSaysNothingAndOneThatLostItsPortSaysSo() throws Exception {
        Path ended = Files.createDirectory(folder.resolve("ended"));
        FakePort port = new FakePort();
        try (WireRecorder recorder = new WireRecorder(ended, List.of(port), CLOCK)) {
            port.send(lines(Place.PELVIS, 0, 300));
            await(() -> recorder.counts().good() == 300);
        }
        Path lost = Files.createDirectory(folder.resolve("lost"));
        FakePort unplugged = new FakePort();
        unplugged.send(lines(Place.PELVIS, 0, 300));
        unplugged.unplug();
        try (WireRecorder recorder = new WireRecorder(lost, List.of(unplugged), CLOCK)) {
            awaitGone(recorder);
        }

        assertThat(KeptRecording.cutShort(ended)).isFalse();
        assertThat(KeptRecording.read(ended, Progress.NONE).pelvis().findings()).isEmpty();
        List<Finding> findings =
                KeptRecording.read(lost, Progress.NONE).pelvis().findings();
        assertThat(findings).extracting(Finding::code).containsExactly(FindingCode.CUT_SHORT);
        assertThat(findings.get(0).message()).contains("did not come back");
    }

    /** The device comes back under another name; its clock went on. */
    @Test
    void aRecordingGoesOnOverALostPort() throws Exception {
        FakeBench bench = new FakeBench();
        FakeBench.Device device = bench.plug("/dev/ttyACM0", "7", 0);
        try (Link link = Link.open(bench, "/dev/ttyACM0", OptionalInt.empty(), ReadableWire::new);
                WireRecorder recorder = new WireRecorder(folder, List.of(link), CLOCK)) {
            device.send(lines(Place.PELVIS, 0, 300));
            device.send("P,1500,0.1,0.2,0".getBytes(StandardCharsets.US_ASCII));
            await(() -> recorder.counts().good() == 300);
            device.unplug();
            awaitGone(recorder);
            device.plugAgain("/dev/ttyACM3");
            await(() -> recorder.heard().get(0).there());
            device.send(".98,0,0,0\n".getBytes(StandardCharsets.US_ASCII));
            device.send(lines(Place.PELVIS, 4, 200));
            await(() -> recorder.counts().good() == 500);
            assertThat(recorder.soFar().orElseThrow().pelvis().stream().size()).isEqualTo(500);
        }

        Recording recording = KeptRecording.read(folder, Progress.NONE);
        assertThat(recording.pelvis().stream().size()).isEqualTo(500);
        assertThat(recording.pelvis().stream().durationS()).isCloseTo(4.995, within(1e-9));
        assertThat(recording.pelvis().findings()).extracting(Finding::code).containsExactly(FindingCode.GAP);
        assertThat(recording.pelvis().findings().get(0).message())
                .startsWith("The port was gone once, first at about 1.5 s");
        assertThat(KeptRecording.cutShort(folder)).isFalse();
    }

    /** Power comes over the cable: the sensor counts from nothing again, and is put where its data arrived. */
    @Test
    void aSensorThatStartedAnewMeanwhileIsPutWhereItsDataArrived() throws Exception {
        SetClock clock = new SetClock();
        FakePort port = new FakePort();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), clock)) {
            for (int i = 0; i < 10; i++) {
                clock.set(100 + i);
                port.send(lines(Place.PELVIS, 50 + i, 200));
                int sent = 200 * (i + 1);
                await(() -> recorder.counts().good() == sent);
            }
            port.unplugFor(300);
            awaitGone(recorder);
            clock.set(140);
            await(() -> recorder.heard().get(0).there());
            port.send(lines(Place.PELVIS, 1, 200));
            await(() -> recorder.counts().good() == 2200);
        }

        Recording recording = KeptRecording.read(folder, Progress.NONE);
        // The first sample of each second arrived with it, at 100 s by the clock: 140 s is 40 s into the recording.
        assertThat(recording.pelvis().stream().time(2000)).isCloseTo(40, within(1e-6));
        assertThat(recording.pelvis().findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.GAP, FindingCode.BACKWARD_TIME);
    }

    @Test
    void twoPortsFillOneRecording() throws Exception {
        FakePort pelvis = new FakePort();
        FakePort upperBack = new FakePort();
        pelvis.send(lines(Place.PELVIS, 0, 300));
        upperBack.send(lines(Place.UPPER_BACK, 7, 200));
        pelvis.unplug();
        upperBack.unplug();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(pelvis, upperBack), CLOCK)) {
            awaitGone(recorder);
        }

        Recording recording = KeptRecording.read(folder, Progress.NONE);

        assertThat(KeptRecording.files(folder)).hasSize(2);
        assertThat(recording.pelvis().stream().size()).isEqualTo(300);
        SensorRecording back = Objects.requireNonNull(recording.upperBack());
        assertThat(back.stream().size()).isEqualTo(200);
        assertThat(back.stream().clockStartS()).isCloseTo(7, within(1e-9));
    }

    /** Somebody looks on and does not let go of the samples; the bytes are kept all the same. */
    @Test
    void keepingDoesNotWaitForThoseWhoLookOn() throws Exception {
        WireStreams streams = new WireStreams();
        PortListener listener = new PortListener(streams);
        FakePort port = new FakePort();
        byte[] sent = lines(Place.PELVIS, 0, 300);
        PortFile file = new PortFile(folder, "port-1", CLOCK, NewFile.ON_DISK);
        PortReader reader = new PortReader(port, file, listener, new CountDownLatch(1));
        Thread reading = new Thread(reader);
        Thread decoding = new Thread(listener);
        synchronized (streams) {
            decoding.start();
            reading.start();
            port.send(sent);
            await(() -> file.bytes() == sent.length);
            assertThat(streams.size(Place.PELVIS)).isZero();
        }
        await(() -> listener.counts().good() == 300);
        reader.end();
        reading.join();
        decoding.join();
    }

    /** A fault in decoding must not end the recording. */
    @Test
    void keepingGoesOnWhenDecodingFails() throws Exception {
        FakePort port = new FakePort();
        PortListener listener = new PortListener((sensor, t, ax, ay, az, gx, gy, gz) -> {
            throw new IllegalStateException("a fault");
        });
        byte[] sent = lines(Place.PELVIS, 0, 300);
        PortFile file = new PortFile(folder, "port-1", CLOCK, NewFile.ON_DISK);
        PortReader reader = new PortReader(port, file, listener, new CountDownLatch(1));
        Thread decoding = new Thread(listener);
        decoding.start();
        Thread reading = new Thread(reader);
        reading.start();
        port.send(sent);
        await(() -> listener.deafness().isPresent());
        port.send(sent);
        await(() -> file.bytes() == 2L * sent.length);
        reader.end();
        reading.join();
        decoding.join();

        assertThat(reader.failure()).isEmpty();
        assertThat(KeptRecording.read(folder, Progress.NONE).pelvis().stream().size())
                .isEqualTo(600);
    }

    @Test
    void nothingIsWrittenOver() throws Exception {
        FakePort port = new FakePort();
        port.unplug();
        new WireRecorder(folder, List.of(port), CLOCK).close();

        assertThatThrownBy(() -> new WireRecorder(folder, List.of(new FakePort()), CLOCK))
                .isInstanceOf(FileAlreadyExistsException.class);
    }

    @Test
    void whoeverAsksIsToldThatARecordingGoesOn() throws Exception {
        FakePort port = new FakePort();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), CLOCK)) {
            assertThat(recorder.soFar()).isEmpty();
            assertThat(KeptRecording.beingWritten(folder)).isTrue();
        }

        assertThat(KeptRecording.beingWritten(folder)).isFalse();
    }

    @Test
    void badLinesAreCountedInAFinding() throws Exception {
        FakePort port = new FakePort();
        port.send(lines(Place.PELVIS, 0, 300));
        port.send("rubbish\nP,1,2,3\n");
        port.send("P,1600,0,0,1,0,0,0*0000\n");
        port.unplug();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), CLOCK)) {
            awaitGone(recorder);
        }

        assertThat(KeptRecording.read(folder, Progress.NONE).pelvis().findings())
                .anyMatch(finding -> finding.code() == FindingCode.REFUSED_ROWS
                        && finding.message()
                                .startsWith("3 of 303 lines or frames in port-1.wire were left out (3 damaged"));
    }

    /** The files are cut at every byte of their end, as a power cut would. */
    @Test
    void aFileCutAnywhereReadsToItsLastWholeLine() throws IOException {
        byte[] bytes = lines(Place.PELVIS, 0, 250);
        int lastLine = bytes.length - lines(Place.PELVIS, 0, 249).length;
        for (int cut = 1; cut < lastLine; cut++) {
            Path part = Files.createDirectory(folder.resolve("cut-" + cut));
            Files.write(part.resolve("port-1.wire"), Arrays.copyOf(bytes, bytes.length - cut));

            Recording recording = KeptRecording.read(part, Progress.NONE);

            // Without its line end a last line is whole only if its checksum fits.
            assertThat(recording.pelvis().stream().size()).isEqualTo(cut == 1 ? 250 : 249);
            assertThat(recording.pelvis().findings()).extracting(Finding::code).containsExactly(FindingCode.CUT_SHORT);
        }
    }

    @Test
    void aSilentPelvisIsOneSentence() throws Exception {
        FakePort port = new FakePort();
        port.send(lines(Place.UPPER_BACK, 0, 300));
        port.unplug();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), CLOCK)) {
            awaitGone(recorder);
        }

        assertThatThrownBy(() -> KeptRecording.read(folder, Progress.NONE))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining("no whole line of the pelvis sensor");
    }

    /** Waits until all ports are gone. */
    static void awaitGone(WireRecorder recorder) throws InterruptedException {
        await(() -> recorder.heard().stream().noneMatch(Heard::there));
    }

    static void await(BooleanSupplier state) throws InterruptedException {
        for (int i = 0; i < 4000 && !state.getAsBoolean(); i++) {
            Thread.sleep(5);
        }
        assertThat(state.getAsBoolean()).isTrue();
    }

    /** A clock a test sets, s. */
    private static final class SetClock extends Clock {

        private volatile long ms;

        void set(double seconds) {
            ms = Math.round(1000 * seconds);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return Instant.ofEpochMilli(ms);
        }
    }

    static byte[] lines(Place place, double fromS, int count) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < count; i++) {
            bytes.writeBytes(LineWriter.line(place, fromS + i * 0.005, 0.1, -0.2, 9.8, 0.01 * (i % 7), 0, -0.02));
        }
        return bytes.toByteArray();
    }
}

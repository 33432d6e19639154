package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.UnusableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a power cut leaves: every file ends anywhere, some with bytes that were never written. */
class PowerCutTest {

    private static final long SEED = 41;
    private static final int CUTS = 400;
    private static final int SAMPLES = 600;

    @TempDir
    private Path folder;

    @Test
    void everyFileCutAnywhereReadsToItsLastWholeSample() throws Exception {
        Map<String, byte[]> whole = recorded();
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < CUTS; k++) {
            String which = "cut " + k + ", seed " + SEED;
            Path raw = Files.createDirectory(folder.resolve("cut-" + k));
            boolean ends = true;
            for (Map.Entry<String, byte[]> file : whole.entrySet()) {
                byte[] all = file.getValue();
                byte[] part = Arrays.copyOf(all, random.nextInt(all.length + 1));
                ends &= part.length == all.length || !file.getKey().endsWith(PortFile.ARRIVALS_ENDING);
                Files.write(raw.resolve(file.getKey()), random.nextInt(4) == 0 ? withZeros(part, random) : part);
            }
            int pelvis = wholeLines(Files.readAllBytes(raw.resolve("port-1.wire")));
            int upperBack = wholeLines(Files.readAllBytes(raw.resolve("port-2.wire")));
            try {
                Recording recording = KeptRecording.read(raw, Progress.NONE);

                // A line without its end still counts if its checksum fits.
                assertThat(recording.pelvis().stream().size()).as(which).isBetween(pelvis, pelvis + 1);
                assertThat(
                                recording.upperBack() == null
                                        ? 0
                                        : recording.upperBack().stream().size())
                        .as(which)
                        .isBetween(upperBack, upperBack + 1);
                assertThat(recording.pelvis().findings().stream()
                                .anyMatch(finding -> finding.code() == FindingCode.CUT_SHORT))
                        .as(which)
                        .isEqualTo(!ends);
            } catch (UnusableInputException e) {
                assertThat(pelvis).as(which).isZero();
            }
        }
    }

    /** Nobody has to ask for it, and nothing more has to come. */
    @Test
    void whatCameIsForcedToTheDiskByItself() throws Exception {
        ForcedFiles files = new ForcedFiles();
        FakePort port = new FakePort();
        try (WireRecorder recorder = new WireRecorder(folder, List.of(port), Clock.systemUTC(), files)) {
            for (int i = 1; i <= 3; i++) {
                byte[] piece = WireRecorderTest.lines(Place.PELVIS, i, 10);
                int before = files.forced.get();
                port.send(piece);
                int sent = i;
                WireRecorderTest.await(() -> recorder.counts().good() == 10L * sent);
                WireRecorderTest.await(() -> files.forced.get() >= before + piece.length);
            }
        }
    }

    /** Two ports, of which the first was gone for a moment. */
    private Map<String, byte[]> recorded() throws Exception {
        Path raw = Files.createDirectory(folder.resolve("whole"));
        FakePort first = new FakePort();
        FakePort second = new FakePort();
        try (WireRecorder recorder = new WireRecorder(raw, List.of(first, second), Clock.systemUTC())) {
            for (int i = 0; i < SAMPLES; i += 50) {
                first.send(WireRecorderTest.lines(Place.PELVIS, i * 0.005, 50));
                second.send(WireRecorderTest.lines(Place.UPPER_BACK, i * 0.005, 50));
                if (i == SAMPLES / 2) {
                    first.unplugFor(300);
                }
                Thread.sleep(50);
            }
            WireRecorderTest.await(() -> recorder.counts().good() == 2L * SAMPLES);
        }
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> paths = Files.list(raw)) {
            for (Path path : paths.toList()) {
                files.put(String.valueOf(path.getFileName()), Files.readAllBytes(path));
            }
        }
        assertThat(files).hasSize(4);
        assertThat(new String(files.get("port-1.arrivals.csv"), StandardCharsets.US_ASCII))
                .contains(",gone\n")
                .contains(",back\n")
                .endsWith(",end\n");
        return files;
    }

    private static byte[] withZeros(byte[] part, SplittableRandom random) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(part);
        bytes.writeBytes(new byte[random.nextInt(1, 5000)]);
        return bytes.toByteArray();
    }

    private static int wholeLines(byte[] bytes) {
        int lines = 0;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }

    /** Counts the bytes of the files that were forced to the disk. */
    private static final class ForcedFiles implements NewFile {

        private final AtomicInteger forced = new AtomicInteger();

        @Override
        public FileChannel make(Path file) throws IOException {
            return new ChannelOf(NewFile.ON_DISK.make(file)) {

                private int written;

                @Override
                public synchronized int write(ByteBuffer bytes) throws IOException {
                    int count = super.write(bytes);
                    written += count;
                    return count;
                }

                @Override
                public synchronized void force(boolean metaData) throws IOException {
                    super.force(metaData);
                    forced.addAndGet(written);
                    written = 0;
                }
            };
        }
    }
}

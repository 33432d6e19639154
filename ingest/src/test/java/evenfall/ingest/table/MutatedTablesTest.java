package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Thousands of damaged tables: a refusal in one sentence, or the rows that were not touched, read as they stood. What was
 * written is the truth: every row has an x acceleration of its own, by which it is known again.
 */
class MutatedTablesTest {

    private static final int FILES = 1000;
    private static final int ROWS = 330;
    private static final String HEADER = "t_ms,ax_g,ay_g,az_g,gx_dps,gy_dps,gz_dps";
    private static final double TOLERANCE = 1e-5;
    private static final Map<String, Integer> WHOLE = new HashMap<>();

    static {
        for (int i = 0; i < ROWS; i++) {
            WHOLE.put(row(i), i);
        }
    }

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 20260302, 77_000_001})
    @Timeout(300) // a guard against hanging, far above what is needed
    void damagedTablesAreReadRightOrRefused(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] whole = table();
        Path file = folder.resolve("table.csv");
        int read = 0;
        for (int i = 0; i < FILES; i++) {
            boolean packed = random.nextInt(5) == 0;
            byte[] damaged = whole;
            int hits = 1 + random.nextInt(4);
            for (int hit = 0; hit < hits; hit++) {
                damaged = damage(damaged, random);
            }
            Files.write(file, packed ? damage(TableCase.gz(damaged), random) : damaged);
            try {
                SensorRecording sensor = RecordingFiles.readSensor(file, null, Progress.NONE);
                read++;
                assertReadAsItStood(damaged, sensor, packed, "seed " + seed + ", file " + i);
            } catch (UnusableInputException e) {
                TableCasesTest.assertOneSentence(e.getMessage());
            } catch (RuntimeException e) {
                fail("seed " + seed + ", file " + i, e);
            }
        }
        assertThat(read).as("most files can still be read").isGreaterThan(FILES / 3);
    }

    private static byte[] table() {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (int i = 0; i < ROWS; i++) {
            text.append(row(i)).append('\n');
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    /** Row {@code i}; its x acceleration is i thousandths of g. */
    private static String row(int i) {
        return TableCase.filled("{t_ms},", i, false)
                + String.format(java.util.Locale.ROOT, "%.5f", i / 1000.0)
                + TableCase.filled(",{ay_g},{az_g},{gx_dps},{gy_dps},{gz_dps}", i, false);
    }

    private static byte[] damage(byte[] bytes, SplittableRandom random) {
        if (bytes.length < 2) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        int length = 1 + random.nextInt(Math.min(60, bytes.length));
        int end = Math.min(bytes.length, at + length);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        switch (random.nextInt(8)) {
            case 0 -> { // cut off, not too near the start
                int keep = bytes.length / 2 + random.nextInt(bytes.length / 2);
                out.write(bytes, 0, keep);
            }
            case 1 -> { // one bit the other way
                byte[] copy = bytes.clone();
                copy[at] ^= (byte) (1 << random.nextInt(8));
                return copy;
            }
            case 2 -> { // a piece lost
                out.write(bytes, 0, at);
                out.write(bytes, end, bytes.length - end);
            }
            case 3 -> { // a piece twice
                out.write(bytes, 0, end);
                out.write(bytes, at, bytes.length - at);
            }
            case 4 -> { // any bytes put in
                out.write(bytes, 0, at);
                for (int i = 0; i < length; i++) {
                    out.write(random.nextInt(256));
                }
                out.write(bytes, at, bytes.length - at);
            }
            case 5 -> { // a sign that means something put in
                out.write(bytes, 0, at);
                out.write("\"\n\r,;\t#-.e\0\u00ff".charAt(random.nextInt(12)));
                out.write(bytes, at, bytes.length - at);
            }
            case 6 -> { // two pieces change places
                int middle = (at + end) / 2;
                out.write(bytes, 0, at);
                out.write(bytes, middle, end - middle);
                out.write(bytes, at, middle - at);
                out.write(bytes, end, bytes.length - end);
            }
            default -> { // a piece erased
                byte[] copy = bytes.clone();
                java.util.Arrays.fill(copy, at, end, (byte) 0);
                return copy;
            }
        }
        return out.toByteArray();
    }

    private static void assertReadAsItStood(byte[] damaged, SensorRecording sensor, boolean packed, String which) {
        List<String> lines = List.of(new String(damaged, StandardCharsets.ISO_8859_1).split("\r\n|\r|\n", -1));
        if (!lines.get(0).equals(HEADER)) {
            return; // another header is another table
        }
        int foreign = 0;
        boolean[] standing = new boolean[ROWS];
        for (String line : lines.subList(1, lines.size())) {
            Integer row = WHOLE.get(line);
            if (row == null) {
                foreign++;
            } else {
                standing[row] = true;
            }
        }
        boolean[] read = new boolean[ROWS];
        int strange = 0;
        SensorStream stream = sensor.stream();
        for (int i = 0; i < stream.size(); i++) {
            int row = rowOf(stream, i);
            if (row < 0) {
                strange++;
            } else {
                read[row] = true;
            }
        }
        // A damaged row may read as numbers that never stood there; an untouched one must not.
        if (!packed) {
            assertThat(strange).as(which + ": samples that never stood there").isLessThanOrEqualTo(foreign);
        }
        int missing = 0;
        for (int row = 0; row < ROWS; row++) {
            missing += standing[row] && !read[row] ? 1 : 0;
        }
        if (missing > 0) {
            assertThat(sensor.findings())
                    .as(which + ": " + missing + " untouched rows are missing")
                    .isNotEmpty();
            if (!packed) {
                // Each of them is named: its time no longer follows a damaged one's, or a quotation mark took it in.
                assertThat(missing)
                        .as(which)
                        .isLessThanOrEqualTo(sensor.findings().size() + 2);
            }
        }
    }

    /** Which row a sample is, or -1 if it is none. */
    private static int rowOf(SensorStream stream, int i) {
        double ax = stream.ax(i) / 9.80665;
        int row = (int) Math.round(ax * 1000);
        if (row < 0 || row >= ROWS) {
            return -1;
        }
        double[] found = {
            ax,
            stream.ay(i) / 9.80665,
            stream.az(i) / 9.80665,
            Math.toDegrees(stream.gx(i)),
            Math.toDegrees(stream.gy(i)),
            Math.toDegrees(stream.gz(i))
        };
        for (int c = 0; c < 6; c++) {
            double expected = c == 0 ? row / 1000.0 : TableCase.value(c, row);
            if (Math.abs(found[c] - expected) > TOLERANCE) {
                return -1;
            }
        }
        return row;
    }
}

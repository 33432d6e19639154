package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.SplittableRandom;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are no tables, broken archives, and files of both sensors. */
class UnusableFilesTest {

    private static final String HEADER = "t_ms,ax_g,ay_g,az_g,gx_dps,gy_dps,gz_dps\n";
    private static final String ROW = "{t_ms},{ax_g},{ay_g},{az_g},{gx_dps},{gy_dps},{gz_dps}\n";

    @TempDir
    Path folder;

    /** First bytes of files of these kinds, from their published formats. */
    @ParameterizedTest
    @CsvSource({
        "504B030414000000, zip archive",
        "FD377A585A000004, xz",
        "425A683931415926, bzip2",
        "28B52FFD24004D00, zstd",
        "04224D186440A700, lz4",
        "377ABCAF271C0004, 7z",
        "255044462D312E37, PDF",
        "D0CF11E0A1B11AE1, spreadsheet",
        "0001020304050607, binary",
        "7F454C4602010100, binary"
    })
    void otherKindsOfFilesAreToldByTheirFirstBytes(String magic, String kind) throws IOException {
        byte[] bytes = Arrays.copyOf(HexFormat.of().parseHex(magic), 600);
        assertRefused(write("table.csv", bytes), kind);
        assertRefused(write("table.csv.gz", TableCase.gz(bytes)), kind);
    }

    @Test
    void nothingThere() throws IOException {
        assertRefused(folder.resolve("absent.csv"), "does not exist");
        assertRefused(folder, "is a folder");
        assertRefused(write("empty.csv", new byte[0]), "is empty");
        assertRefused(write("empty.csv.gz", TableCase.gz(new byte[0])), "holds nothing");
        assertRefused(write("mark.csv", new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}), "holds nothing");
        byte[] twice = TableCase.gz(TableCase.gz(table(300)));
        assertRefused(write("twice.csv.gz", twice), "compressed twice");
        assertRefused(write("start.gz", new byte[] {0x1F, (byte) 0x8B, 8}), "gz that ends before");
    }

    @Test
    void aFileThatMayNotBeRead() throws IOException {
        Path file = write("locked.csv", table(300));
        assumeFalse(!file.toFile().setReadable(false) || Files.isReadable(file), "this user may read everything");
        assertRefused(file, "may not be read");
    }

    @Test
    void aLineOfMegabytes() throws IOException {
        byte[] digits = new byte[3_000_000];
        Arrays.fill(digits, (byte) '7');
        assertRefused(write("digits.csv", digits), "line of more than");
        byte[] late = join(table(300), digits);
        assertRefused(write("late.csv", late), "at line 302");
        byte[] quote = digits.clone();
        quote[0] = '"';
        assertRefused(write("quote.csv", join(table(300), quote)), "at line 302");
    }

    @Test
    void aLongTailOfZeroBytesIsNoHarm() throws IOException {
        Path file = write("tail.csv", join(table(300), new byte[500_000]));
        SensorRecording sensor = RecordingFiles.readSensor(file, null, Progress.NONE);
        assertThat(sensor.stream().size()).isEqualTo(300);
        assertThat(sensor.findings()).extracting(Finding::code).containsExactly(FindingCode.CUT_SHORT);
    }

    @Test
    void aSmallArchiveThatUnpacksToOneHugeLineIsGivenUpEarly() throws IOException {
        Path file = folder.resolve("bomb.csv.gz");
        byte[] digits = new byte[1 << 20];
        Arrays.fill(digits, (byte) '1');
        try (OutputStream gz = new GZIPOutputStream(Files.newOutputStream(file))) {
            gz.write(HEADER.getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; i < 300; i++) {
                gz.write(digits);
            }
        }
        assertRefused(file, "line of more than");
    }

    @Test
    void anArchiveThatEndsEarlyIsReadAsFarAsItGoes() throws IOException {
        byte[] whole = TableCase.gz(noisyTable(2000));
        Path file = write("short.csv.gz", Arrays.copyOf(whole, whole.length * 2 / 3));
        SensorRecording sensor = RecordingFiles.readSensor(file, null, Progress.NONE);
        assertThat(sensor.stream().size()).isBetween(1000, 1600);
        assertThat(sensor.findings()).extracting(Finding::code).containsExactly(FindingCode.CUT_SHORT);
        assertThat(sensor.findings().get(0).message()).contains("ends early");
        double end = sensor.stream().durationS();
        assertThat(sensor.findings().get(0).atS()).isEqualTo(end);
    }

    @Test
    void moreThanOneInAHundredBadRowsAndMoreThanTenAreRefused() throws IOException {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < 1000; i++) {
            text.append(i < 11 ? "bad\n" : TableCase.filled(ROW, i, false));
        }
        assertRefused(write("bad.csv", bytes(text)), "11 bad rows of 1000");
        text.delete(HEADER.length(), HEADER.length() + "bad\n".length());
        SensorRecording ten = RecordingFiles.readSensor(write("ten.csv", bytes(text)), null, Progress.NONE);
        assertThat(ten.findings()).hasSize(10).allSatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.REFUSED_ROWS);
            assertThat(finding.message()).contains("Line ").contains("cell");
        });
    }

    @Test
    void aClockThatStartsAgainIsCarriedOn() throws IOException {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < 400; i++) {
            text.append(TableCase.filled(ROW, i, false));
        }
        for (int i = 0; i < 400; i++) {
            text.append(TableCase.filled(ROW, i, false));
        }
        SensorRecording sensor = RecordingFiles.readSensor(write("again.csv", bytes(text)), null, Progress.NONE);
        assertThat(sensor.stream().size()).isEqualTo(800);
        assertThat(sensor.stream().durationS()).isEqualTo(799 / TableCase.RATE);
        assertThat(sensor.findings()).extracting(Finding::code).containsExactly(FindingCode.BACKWARD_TIME);
        assertThat(sensor.findings().get(0).atS()).isEqualTo(399 / TableCase.RATE);
    }

    @Test
    void bothSensorsFromOneFileByALayout() throws IOException {
        Path layout = Files.writeString(folder.resolve("layout.json"), """
                { "separator": ",", "headerLines": 1, "rateHz": 200, "time": {"column": "t", "unit": "ms"},
                  "accelerometer": {"columns": [2, 3, 4], "unit": "g", "scale": 1},
                  "gyroscope": {"columns": [5, 6, 7], "unit": "deg/s", "scale": 1},
                  "sensorColumn": "who", "sensors": {"pelvis": "P", "upper-back": "B"} }
                """);
        StringBuilder text = new StringBuilder("who,t,a,b,c,d,e,f\n");
        for (int i = 0; i < 300; i++) {
            text.append("P,").append(TableCase.filled(ROW, i, false));
            text.append("B,").append(TableCase.filled("{t_ms},0,0,1,0,0,0\n", i, false));
            text.append("X,0,0,0,0,0,0,0\n");
        }
        Recording recording = RecordingFiles.read(write("both.csv", bytes(text)), null, layout, Progress.NONE);
        assertThat(recording.upperBack()).isNotNull();
        assertThat(recording.pelvis().stream().size()).isEqualTo(300);
        assertThat(recording.pelvis().findings()).isEmpty();
        if (recording.upperBack() != null) {
            assertThat(recording.upperBack().stream().size()).isEqualTo(300);
            assertThat(recording.upperBack().stream().ax(77)).isZero();
        }
        assertThat(recording.pelvis().stream().gx(77)).isNotZero();
    }

    private static byte[] table(int rows) {
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < rows; i++) {
            text.append(TableCase.filled(ROW, i, false));
        }
        return bytes(text);
    }

    private static byte[] noisyTable(int rows) {
        SplittableRandom random = new SplittableRandom(3);
        StringBuilder text = new StringBuilder(HEADER);
        for (int i = 0; i < rows; i++) {
            text.append(5 * i);
            for (int c = 0; c < 6; c++) {
                text.append(',').append(random.nextInt(1000) / 1000.0);
            }
            text.append('\n');
        }
        return bytes(text);
    }

    private static byte[] bytes(CharSequence text) {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] join(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static void assertRefused(Path file, String words) {
        assertThatThrownBy(() -> RecordingFiles.readSensor(file, null, Progress.NONE))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining(words)
                .satisfies(refusal -> TableCasesTest.assertOneSentence(refusal.getMessage()));
    }
}

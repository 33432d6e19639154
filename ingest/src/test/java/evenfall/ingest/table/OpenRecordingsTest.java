package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Open recordings of three kinds, as their own READMEs describe them. */
class OpenRecordingsTest {

    /** Standard gravity, ISO 80000-3. */
    private static final double G = 9.80665;

    @TempDir
    Path folder;

    static Path openFolder(String name) {
        String given = System.getenv("EVENFALL_DATA");
        Path data = given != null ? Path.of(given) : Path.of("..", "..", "shared", "data");
        assumeTrue(Files.isDirectory(data.resolve(name)), "the open recordings (" + data + ") are not here");
        return data.resolve(name);
    }

    static List<Path> files(Path folder, String glob) throws IOException {
        try (Stream<Path> all = Files.walk(folder, 2)) {
            return all.filter(path -> path.getFileName().toString().matches(glob))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void simulatedSessionsReadByTheirHeader() throws IOException {
        for (Path pelvis : files(openFolder("landings"), "pelvis\\.csv\\.gz")) {
            Recording recording =
                    RecordingFiles.read(pelvis, pelvis.resolveSibling("upper-back.csv.gz"), null, Progress.NONE);
            assertThat(recording.pelvis().findings()).as(pelvis.toString()).isEmpty();
            assertSameAsPlainReading(pelvis, recording.pelvis().stream(), 1e-3, G, Math.PI / 180);
            assertThat(recording.upperBack()).isNotNull();
        }
    }

    @Test
    void trialsInSiUnitsReadByTheirHeader() throws IOException {
        for (Path file : files(openFolder("broad"), "[^.]*\\.csv\\.gz")) {
            SensorRecording sensor = RecordingFiles.readSensor(file, null, Progress.NONE);
            assertThat(sensor.findings()).as(file.toString()).isEmpty();
            assertSameAsPlainReading(file, sensor.stream(), 1, 1, 1);
        }
    }

    @Test
    void countsWithoutHeaderReadByALayout() throws IOException {
        Path layout = Files.writeString(folder.resolve("layout.json"), """
                { "separator": ",", "headerLines": 0, "rateHz": 200, "time": null,
                  "accelerometer": {"columns": [0, 1, 2], "unit": "g", "scale": 0.00390625, "range": 16},
                  "gyroscope": {"columns": [3, 4, 5], "unit": "deg/s", "scale": 0.06103515625, "range": 2000},
                  "axes": {"forward": "+z", "up": "-y"} }
                """);
        for (Path file : files(openFolder("sisfall"), ".*\\.txt\\.gz")) {
            SensorRecording sensor = RecordingFiles.readSensor(file, layout, Progress.NONE);
            assertThat(sensor.findings()).as(file.toString()).isEmpty();
            assertThat(sensor.stream().rateHz()).isCloseTo(200, within(1e-6));
            assertThat(sensor.axes()).hasToString("BodyAxes[forward=+z, up=-y]");
        }
    }

    /** Every sample against a plain reading with the platform's own parser. */
    private static void assertSameAsPlainReading(
            Path file, SensorStream stream, double second, double acceleration, double turnRate) throws IOException {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII))) {
            lines.readLine();
            double start = Double.NaN;
            double worst = 0;
            double worstTime = 0;
            int i = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine(), i++) {
                String[] cells = line.split(",", -1);
                double time = Double.parseDouble(cells[0]) * second;
                start = i == 0 ? time : start;
                worstTime = Math.max(worstTime, Math.abs(stream.time(i) - (time - start)));
                double[] read = {stream.ax(i), stream.ay(i), stream.az(i), stream.gx(i), stream.gy(i), stream.gz(i)};
                for (int c = 0; c < 6; c++) {
                    double expected = Double.parseDouble(cells[1 + c]) * (c < 3 ? acceleration : turnRate);
                    worst = Math.max(worst, Math.abs(read[c] - expected) / (1 + Math.abs(expected)));
                }
            }
            assertThat(stream.size()).isEqualTo(i);
            assertThat(worst).as(file.toString()).isLessThan(1e-6);
            assertThat(worstTime).as(file.toString()).isLessThan(1e-6);
        }
    }
}

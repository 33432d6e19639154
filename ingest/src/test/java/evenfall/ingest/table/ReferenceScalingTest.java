package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Counts to SI units by a layout's scales (case S1): 12345 counts at 2048 a g are 59.112839 m/s² with g = 9.80665 m/s² (ISO 80000-3),
 * and -7890 at 16.4 a deg/s are -8.396736 rad/s.
 */
class ReferenceScalingTest {

    /** Samples are kept in single precision. */
    private static final double SINGLE = 5e-6;

    @Test
    void countsTimesTheirScale_areCaseS1(@TempDir Path folder) throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            rows.append("12345,")
                    .append(i % 7)
                    .append(",2048,-7890,")
                    .append(i % 5)
                    .append(",0\n");
        }
        Path table = Files.writeString(folder.resolve("counts.csv"), rows);
        Path layout =
                Files.writeString(folder.resolve("layout.json"), String.format(Locale.ROOT, """
                        {"separator": ",", "headerLines": 0, "rateHz": 200, "time": null,
                         "accelerometer": {"columns": [0, 1, 2], "unit": "g", "scale": %.17g},
                         "gyroscope": {"columns": [3, 4, 5], "unit": "deg/s", "scale": %.17g}}
                        """, 1 / 2048.0, 1 / 16.4));

        SensorStream stream = RecordingFiles.readSensor(table, layout, Progress.NONE).stream();

        assertThat(stream.ax(200)).isCloseTo(59.112839, within(SINGLE));
        assertThat(stream.az(200)).isCloseTo(9.80665, within(SINGLE));
        assertThat(stream.gx(200)).isCloseTo(-8.396736, within(SINGLE));
    }
}

package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Behaviour as data: every case of {@code cases.txt}. The truth is what the case wrote into the file. */
class TableCasesTest {

    private static final double TIME_TOLERANCE = 1e-6;
    private static final double RATE_TOLERANCE = 1e-5;

    @TempDir
    Path folder;

    static List<TableCase> cases() throws IOException {
        return TableCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void each(TableCase each) throws IOException {
        Path file = Files.write(folder.resolve("table.csv"), each.bytes());
        String text = each.layout();
        Path layout = text == null ? null : Files.writeString(folder.resolve("layout.json"), text);
        if (each.expected().startsWith("refused ")) {
            assertThatThrownBy(() -> RecordingFiles.readSensor(file, layout, Progress.NONE))
                    .isInstanceOf(UnusableInputException.class)
                    .hasMessageContaining(each.expected().substring("refused ".length()))
                    .satisfies(refusal -> assertOneSentence(refusal.getMessage()));
            return;
        }
        SensorRecording sensor = RecordingFiles.readSensor(file, layout, Progress.NONE);
        assertFindings(each, sensor);
        if (!each.expected().equals("read-times")) {
            assertSamples(each, sensor.stream());
        }
    }

    @Test
    void thereAreManyCases() throws IOException {
        assertThat(TableCase.all()).hasSizeGreaterThan(80);
    }

    static void assertOneSentence(@Nullable String message) {
        assertThat(message).isNotNull().endsWith(".").doesNotContain("\n").doesNotContain("Exception");
        assertThat(message).as("says what to do").contains(";");
    }

    private static void assertFindings(TableCase each, SensorRecording sensor) {
        if (each.expected().startsWith("finding ")) {
            assertThat(sensor.findings())
                    .isNotEmpty()
                    .anySatisfy(finding -> assertThat(finding.code().code())
                            .isEqualTo(each.expected().substring("finding ".length())));
        } else {
            assertThat(sensor.findings()).isEmpty();
        }
        assertThat(sensor.findings())
                .allSatisfy(finding -> assertThat(finding.message()).endsWith("."));
    }

    private static void assertSamples(TableCase each, SensorStream stream) {
        List<Integer> replaced = each.replaced();
        boolean inserted = each.rows() > TableCase.ROWS;
        assertThat(stream.size()).isEqualTo(each.rows() - replaced.size());
        int at = 0;
        for (int i = 0; i < Math.min(TableCase.ROWS, each.rows()); i++) {
            if (replaced.contains(i)) {
                continue;
            }
            if (inserted && i == 51) {
                at++;
            }
            assertThat(stream.time(at)).isCloseTo(i / TableCase.RATE, within(TIME_TOLERANCE));
            double[] read = {
                stream.ax(at) / 9.80665,
                stream.ay(at) / 9.80665,
                stream.az(at) / 9.80665,
                Math.toDegrees(stream.gx(at)),
                Math.toDegrees(stream.gy(at)),
                Math.toDegrees(stream.gz(at))
            };
            for (int c = 0; c < 6; c++) {
                assertThat(read[c])
                        .as("row %d, value %d", i, c)
                        .isCloseTo(TableCase.value(c, i), within(RATE_TOLERANCE));
            }
            at++;
        }
    }
}

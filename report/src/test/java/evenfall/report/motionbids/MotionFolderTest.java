package evenfall.report.motionbids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.session.InventedSessions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Motion-BIDS as its specification states it: names of files, columns of channels, keys of documents. */
class MotionFolderTest {

    private static final String VALIDATOR = "bids-validator";
    private static final int SAMPLES = 500;

    @TempDir
    private Path folder;

    @Test
    void theFolder_hasTheNamesAndTablesOfTheStandard() throws IOException {
        Path out = written();
        List<Path> tables;
        try (var all = Files.walk(out)) {
            tables = all.filter(path -> path.toString().endsWith("_motion.tsv")).toList();
        }

        assertThat(tables).hasSize(1);
        Path motion = tables.get(0);
        assertThat(motion.getFileName().toString())
                .matches("sub-[A-Za-z0-9]+_ses-[A-Za-z0-9]+_task-drops_tracksys-pelvis_motion\\.tsv");
        assertThat(motion.toString()).contains("/motion/sub-");
        List<String> rows = Files.readAllLines(motion);
        assertThat(rows).hasSize(SAMPLES);
        assertThat(rows.get(1)).isEqualTo("0.005\t0\t0.5\t9.806\t0\t0.25\t0");
        String stem = motion.toString().replace("_motion.tsv", "");
        List<String> channels = Files.readAllLines(Path.of(stem + "_channels.tsv"));
        assertThat(channels.get(0)).startsWith("name\tcomponent\ttype\ttracked_point\tunits");
        assertThat(channels).hasSize(1 + rows.get(0).split("\t", -1).length);
        JsonNode document = JsonMapper.builder().build().readTree(Files.readString(Path.of(stem + "_motion.json")));
        assertThat(document.path("TaskName").asString()).isEqualTo("drops");
        assertThat(document.path("SamplingFrequency").asDouble()).isEqualTo(200);
        assertThat(document.path("ACCELChannelCount").asInt()).isEqualTo(3);
    }

    @Test
    void aFolderWithSomethingInIt_isLeftAlone() throws IOException {
        Path out = Files.createDirectory(folder.resolve("out"));
        Files.writeString(out.resolve("mine.txt"), "mine");

        assertThatThrownBy(() -> MotionFolder.write(InventedSessions.of(3, 1), recording(), out))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining("nothing is written over");
        assertThat(out).isDirectoryContaining(path -> path.endsWith("mine.txt"));
    }

    /** The standard's own validator (npm package bids-validator) finds no error. */
    @Test
    void theStandardsValidator_findsNoError() throws IOException, InterruptedException {
        boolean there = Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":", -1))
                .anyMatch(path -> Files.isExecutable(Path.of(path, VALIDATOR)));
        assumeTrue(there, "no bids-validator on the path: npm install --global bids-validator");
        Path said = folder.resolve("said.json");
        Process validator = new ProcessBuilder(VALIDATOR, written().toString(), "--json")
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(validator.waitFor(2, TimeUnit.MINUTES)).isTrue();
        JsonNode issues = JsonMapper.builder()
                .build()
                .readTree(Files.readString(said, StandardCharsets.UTF_8))
                .path("issues");

        assertThat(issues.has("errors")).isTrue();
        assertThat(issues.path("errors").toString()).isEqualTo("[]");
    }

    private Path written() throws IOException {
        Path out = folder.resolve("export");
        MotionFolder.write(InventedSessions.of(3, 1), recording(), out);
        return out;
    }

    private static Recording recording() {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < SAMPLES; i++) {
            builder.add(i / 200.0, 0, i == 1 ? 0.5 : 0, 9.806, 0, i == 1 ? 0.25 : 0, 0);
        }
        return new Recording(new SensorRecording("invented", builder.build(), null, List.of()), null);
    }
}

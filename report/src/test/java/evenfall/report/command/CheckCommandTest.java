package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void findingsAreNamedWithTheirTimeAndAreNoFailure() throws IOException {
        Path file = table("waist.csv", 9.80665);

        assertThat(run("check", file.toString(), "--format", "json")).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("\"file\" : \"" + file + "\"")
                .contains("\"code\" : \"units\"")
                .contains("\"code\" : \"gap\"")
                .contains("\"rateHz\" : 100");
        assertThat(err.size()).isZero();
    }

    @Test
    void aCleanFileSaysSo() throws IOException {
        assertThat(run("check", table("a.csv", 1).toString())).isZero();

        assertThat(out.toString(StandardCharsets.UTF_8)).contains("100.0 Hz").doesNotContain("units");
    }

    @Test
    void aFileThatCannotBeUsedIsOneSentenceAndHidesNothingOfTheOthers() throws IOException {
        Path good = table("a.csv", 1);

        assertThat(run("check", folder.resolve("none.csv").toString(), good.toString()))
                .isEqualTo(3);

        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains(good.toString())
                .doesNotContain("none.csv");
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
    }

    @Test
    void aLayoutThatCannotBeUsedIsToldOnceForAllFiles() throws IOException {
        Path layout = Files.writeString(folder.resolve("layout.json"), "{");

        assertThat(run(
                        "check",
                        table("a.csv", 1).toString(),
                        table("b.csv", 1).toString(),
                        "--layout",
                        layout.toString()))
                .isEqualTo(3);

        assertThat(out.size()).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1);
    }

    @Test
    void nothingToCheckIsWrongUsage() {
        assertThat(run("check")).isEqualTo(2);
    }

    /** Source: the simulator's own notes on which file is which; here they are given the wrong way round. */
    @Test
    void swappedSensorsAreToldWhereBothAreGiven() throws IOException {
        String stated = System.getenv("EVENFALL_DATA");
        Path data = stated != null ? Path.of(stated) : Path.of("../../shared/data");
        Path session = data.resolve("landings/s1");
        assumeTrue(
                Files.isDirectory(session),
                "the open recordings are not at " + data.toAbsolutePath().normalize());
        Path pelvis = Files.copy(session.resolve("upper-back.csv.gz"), folder.resolve("pelvis.csv.gz"));
        Path back = Files.copy(session.resolve("pelvis.csv.gz"), folder.resolve("upper-back.csv.gz"));

        assertThat(run("check", back.toString(), pelvis.toString(), "--format", "json"))
                .isZero();

        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"sensors-swapped\"");
    }

    /** Someone who stands quietly for 20 s at 100 Hz; half a second is missing at 10 s. */
    private Path table(String name, double factor) throws IOException {
        SplittableRandom random = new SplittableRandom(2);
        StringBuilder text = new StringBuilder("t_ms,ax_g,ay_g,az_g,gx_dps,gy_dps,gz_dps\n");
        for (int i = 0; i < 2000; i++) {
            if (i < 1000 || i >= 1050) {
                text.append(String.format(
                        Locale.ROOT,
                        "%d,%.5f,%.5f,%.5f,%.3f,%.3f,%.3f%n",
                        10 * i,
                        factor * (0.1 + 0.003 * random.nextGaussian()),
                        factor * 0.003 * random.nextGaussian(),
                        factor * (1 + 0.003 * random.nextGaussian()),
                        0.3 + 0.1 * random.nextGaussian(),
                        0.1 * random.nextGaussian(),
                        0.1 * random.nextGaussian()));
            }
        }
        return Files.writeString(folder.resolve(name), text);
    }

    private int run(String... args) {
        return Main.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }
}

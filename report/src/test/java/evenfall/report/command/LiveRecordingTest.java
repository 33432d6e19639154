package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A recording is played onto one pseudo-terminal and recorded from the other, as by two people at two keyboards. What a
 * pseudo-terminal cannot show (line speed, a real cable) is not shown here.
 */
class LiveRecordingTest {

    private static final double PLAYED_S = 56;

    @TempDir
    private Path folder;

    private final Said said = new Said();
    private @Nullable Process socat;

    @AfterEach
    void unplug() throws InterruptedException {
        Process running = socat;
        if (running != null) {
            running.destroyForcibly().waitFor(5, TimeUnit.SECONDS);
        }
    }

    /** Source: truth.json of s1, whose first two contacts are at 39.152 and 53.535 s of the sensor's clock. */
    @Test
    void landingsAreShownOnceAndALostPortEndsInAStoredSession() throws Exception {
        Path pelvis = cut("pelvis.csv.gz");
        Path upperBack = cut("upper-back.csv.gz");
        tie();
        String log = folder.resolve("log").toString();
        int[] status = {-1};
        Thread record = new Thread(() -> status[0] = said.run(
                "record",
                "--log",
                log,
                "--athlete",
                "ada",
                "--port",
                port("right"),
                "--seconds",
                "25",
                "--format",
                "json"));
        record.start();
        said.awaitError("Recording ada");

        Said sender = new Said();
        int sent = sender.run(
                "send",
                "--pelvis",
                pelvis.toString(),
                "--upper-back",
                upperBack.toString(),
                "--port",
                port("left"),
                "--speed",
                "8");
        unplug();
        record.join(60_000);

        assertThat(sent).as(sender.err()).isZero();
        assertThat(status[0]).as(said.err()).isZero();
        assertThat(said.err()).contains("is gone; look at the cable").contains("2 landings of ada");
        assertThat(said.out().lines()).hasSize(2).allMatch(line -> line.contains("\"kind\":\"landing\""));

        Said session = new Said();
        String date = only(folder.resolve("log/ada/sessions"));
        assertThat(session.run("session", "--log", log, "--athlete", "ada", "--date", date, "--format", "json"))
                .isZero();
        assertThat(session.out()).contains("\"cut-short\"").contains("\"upper-back\"");
        assertThat(session.out().split("\"kind\" : \"landing\"", -1)).hasSize(3);

        Path results = folder.resolve("log/ada/sessions").resolve(date).resolve("results");
        Path page = results.resolve("page.html");
        assertThat(said.err()).contains("Its page: " + page);
        assertThat(page)
                .content()
                .contains("kept at the end of the session")
                .satisfies(text ->
                        assertThat(text.split("<section class=\"landing", -1)).hasSize(3));

        // The end of a session uses the samples as they came; made again, the session is read from its files.
        Files.delete(results.resolve("landings.json"));
        Files.delete(results.resolve("traces.csv.gz"));
        Said again = new Said();
        assertThat(again.run("session", "--log", log, "--athlete", "ada", "--date", date, "--format", "json"))
                .isZero();
        assertThat(again.out()).isEqualTo(session.out());
        assertThat(page).as("it shows results that were thrown away").doesNotExist();
    }

    /** The same recording for two people: each has a session of their own, with the two landings of truth.json. */
    @Test
    void theSensorsGoRound() throws Exception {
        Path pelvis = cut("pelvis.csv.gz");
        Path upperBack = cut("upper-back.csv.gz");
        tie();
        String log = folder.resolve("log").toString();
        PipedOutputStream keyboard = new PipedOutputStream();
        said.in = new PipedInputStream(keyboard);
        int[] status = {-1};
        Thread record = new Thread(() -> status[0] =
                said.run("record", "--log", log, "--athlete", "ada", "--port", port("right"), "--talk", "end"));
        record.start();
        said.awaitError("Recording ada");
        String[] send = {
            "send",
            "--pelvis",
            pelvis.toString(),
            "--upper-back",
            upperBack.toString(),
            "--port",
            port("left"),
            "--speed",
            "8"
        };
        assertThat(new Said().run(send)).isZero();
        type(keyboard, "ben\n");
        said.awaitError("no athlete 'ben' in the log yet");
        type(keyboard, "what?\nben\n");
        said.awaitError("'what?' is not understood");
        type(keyboard, "ben\nben\n");
        said.awaitError("Recording ben");
        assertThat(new Said().run(send)).isZero();
        said.awaitError("2 landings of ada");
        type(keyboard, "end\n");
        record.join(60_000);

        assertThat(status[0]).as(said.err()).isZero();
        assertThat(said.out().lines()).hasSize(4);
        assertThat(said.err())
                .contains("Opening routine: stand quietly", "2 landings of ben", "2 landings from ")
                .doesNotContain("is gone");
        assertThat(said.err().split("Opening routine: stand quietly", -1)).hasSizeGreaterThan(2);
    }

    private static void type(PipedOutputStream keyboard, String text) throws IOException {
        keyboard.write(text.getBytes(StandardCharsets.US_ASCII));
        keyboard.flush();
    }

    @Test
    void aMissingPortIsOneSentenceAndMakesNoSession() {
        String missing = folder.resolve("none").toString();
        String log = folder.resolve("log").toString();

        assertThat(said.run("record", "--log", log, "--athlete", "ada", "--port", missing))
                .isEqualTo(3);

        assertThat(said.err().lines()).hasSize(1);
        assertThat(said.err()).startsWith("There is no port " + missing);
        assertThat(folder.resolve("log/ada")).doesNotExist();
    }

    @Test
    void aPortGivenTwiceOrNotAtAllIsOneSentence() {
        String log = folder.resolve("log").toString();

        assertThat(said.run("record", "--log", log, "--athlete", "ada", "--port", "x", "--port", "x"))
                .isEqualTo(2);
        assertThat(said.err()).startsWith("The same port is given twice;");
        assertThat(said.run("record", "--log", log, "--athlete", "ada", "--port", " "))
                .isEqualTo(2);
        assertThat(said.run("record", "--log", log, "--athlete", "ada")).isEqualTo(2);
        assertThat(said.err().lines()).hasSize(3);
        assertThat(said.err().lines().skip(1)).allMatch(line -> line.startsWith("Give the port of the receiver"));
        assertThat(folder.resolve("log/ada")).doesNotExist();
    }

    @Test
    void aSilentPortStoresNothing() throws Exception {
        tie();
        String log = folder.resolve("log").toString();

        assertThat(said.run("record", "--log", log, "--athlete", "ada", "--port", port("right"), "--seconds", "0.5"))
                .isEqualTo(3);

        assertThat(said.err()).contains("nothing was stored");
        assertThat(folder.resolve("log/ada/sessions")).isEmptyDirectory();
    }

    /** As Ctrl-C does: the program is told to end by the system, and must say how it went before it is gone. */
    @Test
    void aProgramToldToEndSaysWhyNothingWasStored() throws Exception {
        tie();
        Path told = folder.resolve("told.txt");
        Process record = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "record",
                        "--log",
                        folder.resolve("log").toString(),
                        "--athlete",
                        "ada",
                        "--port",
                        port("right"))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(told.toFile())
                .start();
        try {
            for (int i = 0; i < 1500 && !Files.readString(told).contains("Recording ada"); i++) {
                Thread.sleep(20);
            }
            record.destroy();

            assertThat(record.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(told).content().contains("Recording ada", "so nothing was stored");
            assertThat(record.exitValue()).isEqualTo(3);
        } finally {
            record.destroyForcibly();
        }
    }

    @Test
    void wrongUseOfSendIsOneSentence() {
        String file = folder.resolve("x.csv").toString();

        assertThat(said.run("send", "--pelvis", file, "--port", "x", "--speed", "0"))
                .isEqualTo(2);
        assertThat(said.run("send", "--pelvis", file, "--port", "x", "--wire", "smoke"))
                .isEqualTo(2);
        assertThat(said.run("send", "--pelvis", file, "--port", "x")).isEqualTo(3);
        assertThat(said.err().lines()).hasSize(3);
    }

    private String port(String name) {
        return folder.resolve(name).toString();
    }

    private void tie() throws IOException, InterruptedException {
        assumeTrue(
                Stream.of("/usr/bin/socat", "/usr/local/bin/socat").anyMatch(path -> Files.isExecutable(Path.of(path))),
                "socat, which ties two pseudo-terminals together, is not installed");
        socat = new ProcessBuilder(
                        "socat", "pty,raw,echo=0,link=" + port("left"), "pty,raw,echo=0,link=" + port("right"))
                .redirectErrorStream(true)
                .start();
        for (int i = 0;
                i < 500 && !(Files.exists(Path.of(port("left"))) && Files.exists(Path.of(port("right"))));
                i++) {
            Thread.sleep(10);
        }
    }

    /** The first part of an open recording, as a plain table. */
    private Path cut(String name) throws IOException {
        String stated = System.getenv("EVENFALL_DATA");
        Path data = stated != null ? Path.of(stated) : Path.of("../../shared/data");
        Path source = data.resolve("landings/s1").resolve(name);
        assumeTrue(
                Files.exists(source),
                "the open recordings are not at " + data.toAbsolutePath().normalize());
        Path target = folder.resolve(name.replace(".gz", ""));
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(source)), StandardCharsets.US_ASCII))) {
            List<String> kept = lines.lines().limit(1 + (long) (PLAYED_S * 200)).toList();
            Files.write(target, kept);
        }
        return target;
    }

    private static String only(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            List<String> names =
                    paths.map(path -> path.getFileName().toString()).toList();
            assertThat(names).hasSize(1);
            return names.get(0);
        }
    }

    /** What the program printed. */
    private static final class Said {

        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private final ByteArrayOutputStream err = new ByteArrayOutputStream();

        private InputStream in = InputStream.nullInputStream();

        int run(String... args) {
            return Main.run(
                    args,
                    in,
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8));
        }

        String out() {
            return out.toString(StandardCharsets.UTF_8);
        }

        String err() {
            return err.toString(StandardCharsets.UTF_8);
        }

        void awaitError(String text) throws InterruptedException {
            for (int i = 0; i < 600 && !err().contains(text); i++) {
                Thread.sleep(20);
            }
            assertThat(err()).contains(text);
        }
    }
}

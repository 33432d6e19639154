package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script with a Java in its way that only tells how it was called, one word a line. */
class StartScriptTest {

    private static final Path SHELL = Path.of("/bin/sh");

    @TempDir
    private Path folder = Path.of("");

    private Path home = Path.of("");
    private Path script = Path.of("");
    private Path java = Path.of("");

    @BeforeEach
    void install() throws IOException {
        assumeTrue(Files.isExecutable(SHELL), "no " + SHELL);
        home = Files.createDirectories(folder.resolve("with spaces"));
        script = Files.copy(Path.of("src/start/evenfall"), home.resolve("evenfall"));
        java = folder.resolve("a java");
        Path program = Files.createDirectories(java.resolve("bin")).resolve("java");
        Files.writeString(program, "#!/bin/sh\nfor word; do echo \"$word\"; done\nexit 3\n");
        assertThat(program.toFile().setExecutable(true)).isTrue();
        assertThat(script.toFile().setExecutable(true)).isTrue();
    }

    @Test
    void handsOnWhatItWasGiven_andTheExitStatus() throws Exception {
        Answer answer = start(Map.of("JAVA_HOME", java.toString()), script, "note", "--surface", "wet grass", "");
        assertThat(answer.lines())
                .containsSequence(
                        "-jar", real().resolve("evenfall.jar").toString(), "note", "--surface", "wet grass", "");
        assertThat(answer.lines())
                .contains("-XX:SharedArchiveFile=" + real().resolve("lib").resolve("evenfall.jsa"));
        assertThat(answer.status()).isEqualTo(3);
    }

    @Test
    void isFoundThroughLinks() throws Exception {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Path near = Files.createSymbolicLink(home.resolve("near"), Path.of("evenfall"));
        Path far = Files.createSymbolicLink(bin.resolve("far"), near);
        Answer answer = start(Map.of("JAVA_HOME", java.toString()), far, "--version");
        assertThat(answer.lines())
                .endsWith("-jar", real().resolve("evenfall.jar").toString(), "--version");
    }

    @Test
    void takesOptionsForTheJavaMachine() throws Exception {
        Answer answer = start(
                Map.of("JAVA_HOME", java.toString(), "EVENFALL_JAVA_OPTIONS", "-Xmx4g -Devenfall.language=xx"),
                script,
                "--version");
        assertThat(answer.lines()).containsSequence("-Xmx4g", "-Devenfall.language=xx", "-jar");
    }

    @Test
    void withoutAJavaItSaysSoInOneSentence() throws Exception {
        Answer answer = start(Map.of("JAVA_HOME", "/nowhere"), script, "--version");
        assertThat(answer.status()).isEqualTo(1);
        assertThat(answer.lines())
                .containsExactly("Evenfall needs Java 17 or newer and finds no '/nowhere/bin/java': install one, or set"
                        + " JAVA_HOME to where it is.");
    }

    private Path real() throws IOException {
        return home.toRealPath();
    }

    private record Answer(int status, List<String> lines) {}

    private static Answer start(Map<String, String> environment, Path script, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(SHELL.toString(), script.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("EVENFALL_JAVA_OPTIONS");
        builder.environment().putAll(environment);
        Process process = builder.start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        List<String> lines = List.of(told.split("\n", -1));
        return new Answer(process.waitFor(), lines.subList(0, lines.size() - 1));
    }
}

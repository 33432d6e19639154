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
        Files.createFile(home.resolve("evenfall.jar"));
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
        assertThat(answer.status()).isEqualTo(3);
    }

    @Test
    void usesTheArchiveOnlyWhereItIs_andOneCollectorOnly() throws Exception {
        Map<String, String> environment = Map.of("JAVA_HOME", java.toString());
        assertThat(start(environment, script, "--version").lines())
                .contains("-XX:+UseSerialGC")
                .noneMatch(word -> word.contains("jsa"));
        Path archive = Files.createDirectory(home.resolve("lib")).resolve("evenfall.jsa");
        Files.createFile(archive);
        assertThat(start(environment, script, "--version").lines())
                .contains("-XX:SharedArchiveFile=" + archive.toRealPath());
        Map<String, String> own = Map.of("JAVA_HOME", java.toString(), "EVENFALL_JAVA_OPTIONS", "-XX:+UseParallelGC");
        assertThat(start(own, script, "--version").lines())
                .contains("-XX:+UseParallelGC")
                .doesNotContain("-XX:+UseSerialGC");
    }

    /** The options stand in five places, for each starts Java in another way: they are the same. */
    @Test
    void allPlacesThatStartItTellTheSame() throws IOException {
        List<String> options = List.of(
                "-XX:TieredStopAtLevel=1",
                "-XX:Tier3BackEdgeThreshold=5000",
                "-XX:+UseSerialGC",
                "-Xlog:all=error,cds=off:stderr");
        for (String place : List.of(
                "src/start/evenfall",
                "src/start/evenfall.cmd",
                "pom.xml",
                "src/main/java/evenfall/report/command/SecondMachine.java")) {
            assertThat(Files.readString(Path.of(place))).as(place).contains(options);
        }
    }

    @Test
    void withoutItsJarItSaysSoInOneSentence() throws Exception {
        Files.delete(home.resolve("evenfall.jar"));
        Answer answer = start(Map.of("JAVA_HOME", java.toString()), script, "--version");
        assertThat(answer.status()).isEqualTo(1);
        assertThat(answer.lines())
                .containsExactly(real().resolve("evenfall.jar")
                        + " is missing: this script starts the program that lies beside it.");
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
        assertThat(answer.lines()).containsSubsequence("-Xmx4g", "-Devenfall.language=xx", "-jar");
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
        builder.environment().keySet().removeIf(name -> name.endsWith("JAVA_OPTIONS"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        List<String> lines = List.of(told.split("\n", -1));
        return new Answer(process.waitFor(), lines.subList(0, lines.size() - 1));
    }
}

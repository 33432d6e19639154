package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SecondMachineTest {

    private static final List<String> ARGS = List.of("landings", "--pelvis", "a b.csv");

    @Test
    void keepsMemoryAndSettings_andPutsItsOwnOptionsBeforeTheJar(@TempDir Path folder) throws IOException {
        Path jar = folder.resolve("evenfall.jar");
        Path archive = Files.createDirectory(folder.resolve("lib")).resolve("evenfall.jsa");
        List<String> given = List.of(
                "-Xmx512m", "-Devenfall.language=xx", "-jar", jar.toString(), "landings", "--pelvis", "a b.csv");
        List<String> command = SecondMachine.command("/jdk/bin/java", given, ARGS);
        assertThat(command).startsWith("/jdk/bin/java", "-Xmx512m", "-Devenfall.language=xx");
        assertThat(command).contains("-XX:TieredStopAtLevel=1");
        assertThat(command).endsWith("-jar", jar.toString(), "landings", "--pelvis", "a b.csv");
        // Java told of an archive that is not there would not use its own either.
        assertThat(command).noneMatch(option -> option.contains("jsa"));
        Files.createFile(archive);
        assertThat(SecondMachine.command("/jdk/bin/java", given, ARGS)).contains("-XX:SharedArchiveFile=" + archive);
    }

    @Test
    void theSecondIsNotStartedAgain() {
        List<String> first =
                SecondMachine.command("java", List.of("-jar", "evenfall.jar", "landings", "--pelvis", "a b.csv"), ARGS);
        assertThat(first).isNotEmpty();
        assertThat(SecondMachine.command("java", first.subList(1, first.size()), ARGS))
                .isEmpty();
    }

    @Test
    void whoToldTheMachineMoreKeepsIt() {
        for (String option : List.of(
                "-agentlib:jdwp=transport=dt_socket",
                "-XX:+UseZGC",
                "-javaagent:x.jar",
                "-ea",
                "-Dcom.sun.management.jmxremote.port=1")) {
            List<String> given = List.of(option, "-jar", "evenfall.jar", "landings", "--pelvis", "a b.csv");
            assertThat(SecondMachine.command("java", given, ARGS)).as(option).isEmpty();
        }
    }

    @Test
    void withoutAJarOrAWordFromTheSystem_itStaysWhereItIs() {
        List<String> classes = List.of("-cp", "classes", "Main", "landings", "--pelvis", "a b.csv");
        assertThat(SecondMachine.command("java", classes, ARGS)).isEmpty();
        assertThat(SecondMachine.command("java", List.of(), ARGS)).isEmpty();
        List<String> other = List.of("-jar", "evenfall.jar", "landings", "--pelvis", "cut short");
        assertThat(SecondMachine.command("java", other, ARGS)).isEmpty();
        List<String> given = List.of("-jar", "evenfall.jar", "landings", "--pelvis", "a b.csv");
        assertThat(SecondMachine.command("", given, ARGS)).isEmpty();
    }

    @Test
    void otherCommandsAndMissingFilesStayWhereTheyAre(@TempDir Path folder) throws IOException {
        Path file = Files.write(folder.resolve("pelvis.csv"), new byte[1 << 10]);
        Path none = folder.resolve("none.csv");
        assertThat(SecondMachine.sizeOf(new String[0])).isZero();
        assertThat(SecondMachine.sizeOf(new String[] {"check", file.toString()}))
                .isZero();
        assertThat(SecondMachine.sizeOf(new String[] {"landings", "--pelvis", none.toString()}))
                .isZero();
        assertThat(SecondMachine.sizeOf(new String[] {"landings", "--pelvis", file.toString(), "--out", "x"}))
                .isEqualTo(1 << 10);
        assertThat(SecondMachine.sizeOf(new String[] {"landings", "--pelvis=" + file, "--upper-back", file.toString()}))
                .isEqualTo(2 << 10);
    }

    @Test
    void aShortRecordingIsHandedOnOnlyToAnArchive() {
        List<String> plain = List.of("java", "-jar", "evenfall.jar", "landings");
        List<String> archived =
                List.of("java", "-XX:SharedArchiveFile=lib/evenfall.jsa", "-jar", "evenfall.jar", "landings");
        assertThat(SecondMachine.pays(plain, 1 << 20)).isFalse();
        assertThat(SecondMachine.pays(plain, 8 << 20)).isTrue();
        assertThat(SecondMachine.pays(archived, 1 << 10)).isTrue();
        assertThat(SecondMachine.pays(List.of(), 8 << 20)).isFalse();
    }

    @Test
    void theStatusIsThatOfTheSecond() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        assertThat(SecondMachine.run(List.of(java, "-Xlog:disable", "-Xshare:auto", "--version")))
                .hasValue(0);
        assertThat(SecondMachine.run(List.of("/nowhere/java", "--version"))).isEmpty();
    }
}

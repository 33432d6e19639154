package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LongWorkTest {

    private static final List<String> ARGS = List.of("landings", "--pelvis", "a b.csv");

    @Test
    void keepsMemoryAndSettings_andPutsItsOwnOptionsBeforeTheJar(@TempDir Path folder) throws IOException {
        Path jar = folder.resolve("evenfall.jar");
        Path archive = Files.createDirectory(folder.resolve("lib")).resolve("evenfall.jsa");
        List<String> given = List.of(
                "-Xmx512m", "-Devenfall.language=xx", "-jar", jar.toString(), "landings", "--pelvis", "a b.csv");
        List<String> command = LongWork.command("/jdk/bin/java", given, ARGS);
        assertThat(command).startsWith("/jdk/bin/java", "-Xmx512m", "-Devenfall.language=xx");
        assertThat(command).contains("-XX:TieredStopAtLevel=1");
        assertThat(command).endsWith("-jar", jar.toString(), "landings", "--pelvis", "a b.csv");
        // Java told of an archive that is not there would not use its own either.
        assertThat(command).noneMatch(option -> option.contains("jsa"));
        Files.createFile(archive);
        assertThat(LongWork.command("/jdk/bin/java", given, ARGS)).contains("-XX:SharedArchiveFile=" + archive);
    }

    @Test
    void theSecondIsNotStartedAgain() {
        List<String> first =
                LongWork.command("java", List.of("-jar", "evenfall.jar", "landings", "--pelvis", "a b.csv"), ARGS);
        assertThat(first).isNotEmpty();
        assertThat(LongWork.command("java", first.subList(1, first.size()), ARGS))
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
            assertThat(LongWork.command("java", given, ARGS)).as(option).isEmpty();
        }
    }

    @Test
    void withoutAJarOrAWordFromTheSystem_itStaysWhereItIs() {
        List<String> classes = List.of("-cp", "classes", "Main", "landings", "--pelvis", "a b.csv");
        assertThat(LongWork.command("java", classes, ARGS)).isEmpty();
        assertThat(LongWork.command("java", List.of(), ARGS)).isEmpty();
        List<String> other = List.of("-jar", "evenfall.jar", "landings", "--pelvis", "cut short");
        assertThat(LongWork.command("java", other, ARGS)).isEmpty();
        List<String> given = List.of("-jar", "evenfall.jar", "landings", "--pelvis", "a b.csv");
        assertThat(LongWork.command("", given, ARGS)).isEmpty();
    }

    @Test
    void shortWorkAndOtherCommandsStayWhereTheyAre(@TempDir Path folder) throws IOException {
        Path small = Files.write(folder.resolve("small.csv"), new byte[1 << 20]);
        Path large = Files.write(folder.resolve("large.csv"), new byte[8 << 20]);
        assertThat(LongWork.isLong(new String[0])).isFalse();
        assertThat(LongWork.isLong(new String[] {"landings", "--pelvis", small.toString()}))
                .isFalse();
        assertThat(LongWork.isLong(new String[] {"check", large.toString()})).isFalse();
        assertThat(LongWork.isLong(new String[] {"landings", "--pelvis=" + large}))
                .isTrue();
        assertThat(LongWork.isLong(new String[] {"landings", "--pelvis", large.toString(), "--out", "x"}))
                .isTrue();
    }

    @Test
    void theStatusIsThatOfTheSecond() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        assertThat(LongWork.run(List.of(java, "-Xlog:disable", "-Xshare:auto", "--version")))
                .hasValue(0);
        assertThat(LongWork.run(List.of("/nowhere/java", "--version"))).isEmpty();
    }
}

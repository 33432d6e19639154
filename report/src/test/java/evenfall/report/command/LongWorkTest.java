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
    void keepsMemoryAndSettings_andPutsItsOwnOptionsBeforeTheJar() {
        List<String> command = LongWork.command(
                "/jdk/bin/java",
                List.of(
                        "-Xmx512m",
                        "-Devenfall.language=xx",
                        "-jar",
                        "x/evenfall.jar",
                        "landings",
                        "--pelvis",
                        "a b.csv"),
                ARGS);
        assertThat(command).startsWith("/jdk/bin/java", "-Xmx512m", "-Devenfall.language=xx");
        assertThat(command).contains("-XX:TieredStopAtLevel=1", "-XX:SharedArchiveFile=x/lib/evenfall.jsa");
        assertThat(command).endsWith("-jar", "x/evenfall.jar", "landings", "--pelvis", "a b.csv");
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
        for (String option : List.of("-agentlib:jdwp=transport=dt_socket", "-XX:+UseZGC", "-javaagent:x.jar", "-ea")) {
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
        assertThat(LongWork.handOn(new String[0])).isEmpty();
        assertThat(LongWork.handOn(new String[] {"landings", "--pelvis", small.toString()}))
                .isEmpty();
        assertThat(LongWork.handOn(new String[] {"check", large.toString()})).isEmpty();
        // Tests are not started from a jar of the program's.
        assertThat(LongWork.handOn(new String[] {"landings", "--pelvis=" + large}))
                .isEmpty();
    }
}

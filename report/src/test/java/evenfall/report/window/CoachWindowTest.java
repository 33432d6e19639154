package evenfall.report.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.fusion.landing.Side;
import evenfall.ingest.progress.Progress;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import evenfall.report.result.LoggedSessions;
import evenfall.report.session.Session;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window itself, on a screen, with real clicks and keys, in a program of its own that is killed or closed. */
final class CoachWindowTest {

    private static final String SPEED = "10";
    private static final long PATIENCE_S = 120;

    @TempDir
    static Path folder;

    private static @Nullable Process screen;
    private static @Nullable String display;

    @BeforeAll
    static void findScreen() throws IOException {
        display = System.getenv("DISPLAY");
        if (display == null && onPath("Xvfb")) {
            Process started = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1366x900x24")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            screen = started;
            BufferedReader out = started.inputReader(StandardCharsets.US_ASCII);
            String number = out.readLine();
            display = number == null ? null : ":" + number.strip();
        }
    }

    @AfterAll
    static void endScreen() {
        if (screen != null) {
            screen.destroy();
        }
    }

    @Test
    void wholeRehearsedSession_handOver_killed_openedAgain_closed() throws Exception {
        assumeTrue(display != null, "there is no screen: DISPLAY is not set and Xvfb is not installed");
        assumeTrue(hasWindows(), "this Java was built without windows");
        Path log = folder.resolve("log");
        assertThat(walk("session", log))
                .contains("routine led", "six landings", "cable pulled and put in again")
                .anyMatch(line -> line.startsWith("handed over in three presses"));
        TrainingLog rehearsed = TrainingLog.open(log.resolve(".rehearsal"));
        AthleteFolder mirel = rehearsed.athlete("Mirel");
        anHourAgo(mirel.folder());
        assertThat(walk("again", log))
                .containsExactly(
                        "what was cut short is found",
                        "effort answered",
                        "looked back and left one out",
                        "pain before the first drop stops",
                        "closed while it recorded");

        List<SessionDate> dates = mirel.sessions();
        assertThat(dates)
                .as("the second was running when the window was closed")
                .hasSize(2);
        Session session = new LoggedSessions(mirel, Progress.NONE, told -> {}).summary(dates.get(0));
        assertThat(session.count()).isEqualTo(6);
        LandingNote last = session.landings().get(5).note();
        assertThat(last.side()).isEqualTo(Side.BOTH);
        assertThat(last.heightM()).as("what was pressed, not what was measured").isEqualTo(0.5);
        assertThat(last.surface()).isEqualTo("mat");
        assertThat(last.leftOut()).isTrue();
        assertThat(session.diary()).anyMatch(entry -> entry.soreness().equals(java.util.Map.of("right calf", 3)));
        assertThat(session.diary()).anyMatch(entry -> entry.effort() != null && entry.effort() == 6);
        AthleteFolder senka = rehearsed.athlete("Senka");
        assertThat(senka.sessions()).isEmpty();
        assertThat(senka.diary(told -> {}).values())
                .singleElement()
                .satisfies(day -> assertThat(day).anyMatch(DiaryEntry::stopsDrops));
        assertThat(rehearsed.athlete("Tovan").sessions()).hasSize(1);
        assertThat(TrainingLog.open(log).athletes())
                .as("nothing invented among what is real")
                .isEmpty();
    }

    /** What a walk says it did. */
    private static List<String> walk(String name, Path log) throws IOException, InterruptedException {
        Path said = folder.resolve(name + ".txt");
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-Duser.language=en",
                        "-Duser.country=GB",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Walks.class.getName(),
                        name,
                        log.toString(),
                        SPEED)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().put("DISPLAY", String.valueOf(display));
        Process walk = builder.start();
        boolean ended = walk.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        walk.destroyForcibly();
        String text = Files.readString(said);
        assertThat(ended).as(text).isTrue();
        assertThat(walk.waitFor()).as(text).isZero();
        List<String> done = new ArrayList<>();
        text.lines().filter(line -> line.startsWith("DONE ")).forEach(line -> done.add(line.substring(5)));
        return done;
    }

    /** Effort is asked half an hour after a session. */
    private static void anHourAgo(Path athlete) throws IOException {
        FileTime then = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
        try (Stream<Path> files = Files.walk(athlete)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                Files.setLastModifiedTime(file, then);
            }
        }
    }

    /** A Java for machines without a screen lacks this library. */
    private static boolean hasWindows() {
        Path libraries = Path.of(System.getProperty("java.home"), "lib");
        return !Files.exists(libraries.resolve("libawt.so")) || Files.exists(libraries.resolve("libawt_xawt.so"));
    }

    private static boolean onPath(String program) {
        for (String part : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
            if (!part.isEmpty() && Files.isExecutable(Path.of(part).resolve(program))) {
                return true;
            }
        }
        return false;
    }
}

package evenfall.report.demo;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.progress.Progress;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoRunTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\"#]+)\"");

    private final List<String> told = Collections.synchronizedList(new ArrayList<>());
    private Path folder = Path.of("");
    private Path index = Path.of("");

    @BeforeAll
    void make(@TempDir Path empty) throws IOException {
        folder = empty;
        index = new DemoRun(folder, Progress.NONE, told::add).perform();
    }

    @Test
    void demo_leavesALogAPageForEverySessionAndOneForTheBlock_andLeadsToAll() throws IOException {
        List<String> pages = pages(folder);
        List<String> sessions;
        try (Stream<Path> logged = Files.list(folder.resolve("log/mirel-tannow/sessions"))) {
            sessions = logged.map(path -> "session-" + path.getFileName() + ".html")
                    .sorted()
                    .toList();
        }
        assertThat(sessions).hasSizeGreaterThan(10);
        assertThat(pages).containsAll(sessions).contains("block.html");
        assertThat(links(index))
                .containsAll(sessions)
                .contains("block.html")
                .allSatisfy(link -> assertThat(folder.resolve(link)).isRegularFile());
        assertThat(Files.readString(index)).contains("invented");
        assertThat(Files.readString(folder.resolve("block.html"))).contains("left ankle");
        assertThat(told).isEmpty();
        assertThat(folder.resolve("log/mirel-tannow/sessions/2026-05-08/raw/port-1.wire"))
                .isNotEmptyFile();
        assertThat(folder.resolve("log/mirel-tannow/sessions/2026-05-08/results/live.json"))
                .content()
                .contains("\"peakG\"");
        assertThat(Files.readString(index)).contains("Opening routine: stand quietly");
    }

    /** The story is shown to coaches: its own may decide for a step the program does not name, but not against what it says. */
    @Test
    void noSessionGoesAgainstWhatTheProgramSaysOnThatDay_andWhereTheCoachDecidesThePageSaysSo() throws IOException {
        int own = 0;
        for (Advised day : Advised.all(TrainingLog.open(folder.resolve("log")).athlete("mirel-tannow"))) {
            boolean said = day.diary().stream()
                    .anyMatch(entry -> String.valueOf(entry.note()).startsWith("The coach's own decision:"));
            String where = day.session() + ": " + day.next().arguedOption();
            if (said) {
                own++;
                assertThat(day.isOneStepOfTheCoach()).as(where).isTrue();
                assertThat(day.topM()).as(where).isGreaterThan(day.highestM());
                assertThat(Files.readString(folder.resolve("session-" + day.session() + ".html")))
                        .contains("own decision:");
                assertThat(Files.readString(index)).contains("own decision:");
            } else {
                assertThat(day.topM()).as(where).isLessThanOrEqualTo(day.highestM() + 1e-9);
            }
        }
        assertThat(own).isEqualTo(3);
    }

    @Test
    void theRoutineIsHeardStepByStep_andNoLineOfItTwice() throws IOException {
        List<String> heard = new ArrayList<>();
        Matcher line = Pattern.compile("<li>([^<]*)</li>").matcher(Files.readString(index));
        while (line.find()) {
            heard.add(line.group(1));
        }
        int ready = heard.indexOf(heard.stream()
                .filter(sentence -> sentence.startsWith("Ready:"))
                .findFirst()
                .orElseThrow());
        assertThat(heard.subList(0, ready)).doesNotHaveDuplicates();
        assertThat(heard.get(0)).startsWith("Opening routine: stand quietly");
        assertThat(heard).anyMatch(sentence -> sentence.startsWith("Good. Now bend forward"));
    }

    private static List<String> pages(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".html"))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> links(Path page) throws IOException {
        Matcher matcher = LINK.matcher(Files.readString(page));
        List<String> links = new ArrayList<>();
        while (matcher.find()) {
            links.add(matcher.group(1));
        }
        return links;
    }
}

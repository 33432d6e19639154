package evenfall.report.demo;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.progress.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoRunTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\"#]+)\"");

    @Test
    void demo_leavesALogAPageForEverySessionAndOneForTheBlock_andLeadsToAll(@TempDir Path folder) throws IOException {
        List<String> told = Collections.synchronizedList(new ArrayList<>());

        Path index = new DemoRun(folder, Progress.NONE, told::add).perform();

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

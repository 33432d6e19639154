package evenfall.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.report.block.Block;
import evenfall.report.captions.Captions;
import evenfall.report.film.FilmClock;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Background;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every page in a real browser without a window, looked at by playwright-core, axe-core and the Nu HTML checker. The film is made in the browser: ten minutes, sparse, thirty pictures a second round each landing and one a second
 * elsewhere, each showing its own number; its clock runs 50 parts in a million fast and starts 12.34 s late.
 */
class BrowserPageTest {

    /** Some ten minutes of landings, 25 s apart. */
    private static final int LANDINGS = 23;

    /** A press tells a moment to a picture, and so does a look at one. */
    private static final int ONE_PICTURE = 1;

    @TempDir
    private Path folder;

    /** Each page at a desk, on a telephone, enlarged to twice its size, and with letters twice as large. */
    @Test
    void pages_areSoundInABrowser() throws Exception {
        Block block = InventedBlocks.block(12, 9);
        SortedMap<LocalDate, List<DiaryEntry>> diary = InventedBlocks.diary("land quietly");
        diary.put(InventedBlocks.FIRST.plusDays(30), List.of(InventedBlocks.pain(3)));
        List<Path> pages = List.of(
                page(InventedSessions.of(LANDINGS, 3), "session.html"),
                page(InventedSessions.of(0, 3), "empty.html"),
                page("block.html", out -> BlockPage.write(block, diary, InventedBlocks.outlook(block, diary), out)),
                page("demo.html", BrowserPageTest::writeDemo));

        JsonNode seen = seen("sound.cjs", pages.stream().map(Path::toString).toList());

        assertThat(seen).hasSize(pages.size()).allSatisfy(page -> {
            assertThat(page.path("console")).as("said on the console").isEmpty();
            assertThat(page.path("asked")).as("asked from outside").isEmpty();
            assertThat(page.path("violations")).as("found by axe").isEmpty();
            assertThat(page.path("unreached")).as("never reached by keyboard").isEmpty();
            assertThat(page.path("noRing")).as("focus that is not seen").isEmpty();
            assertThat(page.path("tooWide").properties())
                    .hasSize(5)
                    .allSatisfy(view -> assertThat(view.getValue().asInt())
                            .as(view.getKey())
                            .isLessThanOrEqualTo(0));
            assertThat(page.path("views").properties()).hasSize(5).allSatisfy(view -> {
                assertThat(view.getValue().path("letters").asInt()).isGreaterThan(10);
                for (String fault : List.of("pale", "faint", "overlapping", "outside")) {
                    assertThat(view.getValue().path(fault))
                            .as(page.path("page").asString() + ", " + view.getKey() + ": " + fault)
                            .isEmpty();
                }
            });
        });
        // The strip and the table take two sheets, left, right and method three more, a passed landing one, held ones a
        // third.
        assertThat(seen.path(0).path("sheets").asInt())
                .isGreaterThan(5)
                .isLessThanOrEqualTo(5 + passed(InventedSessions.of(LANDINGS, 3)) + LANDINGS / 3);
        assertThat(seen.path(0).path("reachable").asInt()).isGreaterThan(2 * LANDINGS);
        assertThat(seen.path(0).path("views").path("1280").path("marks").asInt())
                .isGreaterThan(2 * LANDINGS);
        assertThat(seen.path(2).path("reachable").asInt()).isGreaterThan(1);
    }

    private static int passed(Session session) {
        return (int) session.landings().stream()
                .filter(event ->
                        event.verdict() != null && !event.verdict().reasons().isEmpty())
                .count();
    }

    @Test
    void sessionPage_showsWhatIsPressed_andTheRightPictureOfTheFilm() throws Exception {
        Path page = page(InventedSessions.of(LANDINGS, 3), "page.html");

        JsonNode seen = seen(
                "look.cjs",
                List.of(
                        page.toString(),
                        copied("film-maker.js").toString(),
                        folder.resolve("film.webm").toString()));

        assertThat(seen.path("console")).as("said on the console").isEmpty();
        assertThat(seen.path("shown").toString()).isEqualTo("[\"landing-2\"]");
        assertThat(seen.path("narrowed"))
                .isNotEmpty()
                .allMatch(form -> form.asString().equals("held"));
        List<Double> sorted =
                seen.path("sorted").valueStream().map(JsonNode::asDouble).toList();
        assertThat(sorted).hasSize(LANDINGS).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        filmIsRight(seen);
    }

    /** A film player reads what is written as captions, and shows each over its landing. */
    @Test
    void captions_standOverAFilm() throws Exception {
        Session session = InventedSessions.of(6, 3);
        FilmClock clock = new FilmClock(12.34, 50);
        Path track = page("captions.vtt", out -> Captions.write(session, clock, out));

        JsonNode cues = seen(
                "captions.cjs",
                List.of(track.toString(), copied("film-maker.js").toString(), "240"));

        assertThat(cues).hasSize(session.landings().size());
        for (int i = 0; i < cues.size(); i++) {
            JsonNode cue = cues.path(i);
            double contact = session.landings().get(i).landing().moments().contactS();
            assertThat(cue.path("from").asDouble()).isCloseTo(clock.filmS(contact), within(0.001));
            assertThat(cue.path("plain").asString())
                    .startsWith("Landing " + (i + 1))
                    .doesNotContain("&");
            assertThat(cue.path("shown").valueStream().map(JsonNode::asString))
                    .containsExactly(cue.path("text").asString());
        }
    }

    /** What a script says of what it saw in a browser; the test is left out where there is none. */
    private JsonNode seen(String script, List<String> given) throws IOException, InterruptedException {
        Path browser = onPath("chromium", "chromium-browser", "google-chrome");
        Path node = onPath("node");
        assumeTrue(browser != null && node != null, "no chromium and node on the path");
        String modules = modules("playwright-core", "axe-core");
        assumeTrue(modules != null, "no playwright-core and axe-core: npm install --global playwright-core axe-core");
        Path said = folder.resolve("seen.json");
        List<String> words = new ArrayList<>(List.of(
                Objects.requireNonNull(node).toString(),
                copied(script).toString(),
                Objects.requireNonNull(browser).toString()));
        words.addAll(given);
        ProcessBuilder look = new ProcessBuilder(words)
                .redirectOutput(said.toFile())
                .redirectError(folder.resolve("trouble.txt").toFile());
        look.environment().put("NODE_PATH", Objects.requireNonNull(modules));
        Process looking = look.start();
        assertThat(looking.waitFor(3, TimeUnit.MINUTES)).isTrue();
        assertThat(Files.readString(folder.resolve("trouble.txt"))).isEmpty();
        return JsonMapper.builder().build().readTree(Files.readString(said));
    }

    private static void filmIsRight(JsonNode seen) {
        assertThat(seen.path("filmS").asDouble()).isGreaterThan(600);
        assertThat(seen.path("clock").asString())
                .contains("heel drop 1, 0:20", "contact of landing " + LANDINGS + ", ");
        assertThat(seen.path("keep").asString()).contains("note --log LOG", "--film-starts 12.3");
        assertThat(seen.path("pictures"))
                .hasSize(LANDINGS)
                .allSatisfy(picture -> assertThat(picture.path("shown").asInt()
                                - picture.path("right").asInt())
                        .as(picture.toString())
                        .isBetween(-ONE_PICTURE, ONE_PICTURE));
        assertThat(seen.path("cursor").path("at").asDouble())
                .isBetween(
                        seen.path("cursor").path("contact").asDouble() - 5,
                        seen.path("cursor").path("contact").asDouble() + 5);
        assertThat(seen.path("keys").toString()).isEqualTo("[1,-1]");
        assertThat(seen.path("upLeadsTo").asString()).isEqualTo("landing-" + (LANDINGS - 1));
        double began = seen.path("played").path(0).asDouble();
        double half = seen.path("played").path(2).asDouble();
        assertThat(began).isBetween(half - 0.1, half + 0.1);
        assertThat(seen.path("played").path(1).asDouble()).isEqualTo(0.25);
        assertThat(seen.path("compared").path(0).asInt()
                        - seen.path("compared").path(1).asInt())
                .isBetween(-ONE_PICTURE, ONE_PICTURE);
    }

    /** The open checker of the HTML standard finds no error. */
    @Test
    void theHtmlChecker_findsNoError() throws Exception {
        String modules = modules("vnu-jar");
        assumeTrue(modules != null, "no vnu-jar: npm install --global vnu-jar");
        Block block = InventedBlocks.block(5);
        SortedMap<LocalDate, List<DiaryEntry>> diary = InventedBlocks.diary("land quietly");
        Path jar = Path.of(Objects.requireNonNull(modules), "vnu-jar", "build", "dist", "vnu.jar");
        Path said = folder.resolve("said.json");
        Process checker = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xss4m",
                        "-jar",
                        jar.toString(),
                        "--format",
                        "json",
                        "--errors-only",
                        page(InventedSessions.of(3, 3), "full.html").toString(),
                        page(InventedSessions.of(0, 3), "empty.html").toString(),
                        page(
                                        "block.html",
                                        out -> BlockPage.write(block, diary, InventedBlocks.outlook(block, diary), out))
                                .toString(),
                        page("no-block.html", out -> BlockPage.write(InventedBlocks.block(0), new TreeMap<>(), out))
                                .toString(),
                        page("demo.html", BrowserPageTest::writeDemo).toString())
                .redirectError(said.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();

        assertThat(checker.waitFor(2, TimeUnit.MINUTES)).isTrue();
        JsonNode messages =
                JsonMapper.builder().build().readTree(Files.readString(said)).path("messages");
        assertThat(messages.isArray()).isTrue();
        assertThat(messages.toString()).isEqualTo("[]");
    }

    private Path page(Session session, String name) throws IOException {
        Background background =
                new Background(List.of(), null, "note --log LOG --athlete a --date 2026-03-02", null, 0.75, null);
        return page(name, out -> SessionPage.write(session, background, out));
    }

    private Path page(String name, Page page) throws IOException {
        StringBuilder text = new StringBuilder();
        page.writeTo(text);
        return Files.writeString(folder.resolve(name), text);
    }

    private static void writeDemo(Appendable out) throws IOException {
        DemoPage.write(
                "Invented",
                "a hall",
                "block.html",
                List.of(new DemoPage.Entry(
                        new SessionDate(LocalDate.of(2026, 3, 3), 0), "session.html", "No landing.")),
                List.of("Stand quietly."),
                out);
    }

    private Path copied(String resource) throws IOException {
        try (InputStream in = BrowserPageTest.class.getResourceAsStream(resource)) {
            Path to = folder.resolve(resource);
            Files.write(to, Optional.ofNullable(in).orElseThrow().readAllBytes());
            return to;
        }
    }

    private static @Nullable Path onPath(String... names) {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":", -1))
                .flatMap(place -> Stream.of(names).map(name -> Path.of(place, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(null);
    }

    /** The folder that holds these modules of node, or null. */
    private static @Nullable String modules(String... names) throws IOException, InterruptedException {
        String stated = System.getenv("NODE_PATH");
        Path npm = onPath("npm");
        String global = "";
        if (npm != null) {
            Process asked = new ProcessBuilder(npm.toString(), "root", "--global")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            global = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            asked.waitFor();
        }
        return Stream.of(stated == null ? "" : stated, global)
                .filter(root -> !root.isEmpty())
                .filter(root -> Stream.of(names).allMatch(name -> Files.isDirectory(Path.of(root, name))))
                .findFirst()
                .orElse(null);
    }

    /** Something that writes a page. */
    private interface Page {

        void writeTo(Appendable out) throws IOException;
    }
}

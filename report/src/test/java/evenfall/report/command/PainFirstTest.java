package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands first stands first on every output, until the place is noted as 0 again; nothing raw ever changes. */
class PainFirstTest {

    private final JsonMapper mapper = JsonMapper.builder().build();

    @TempDir
    private Path folder;

    private Path log = Path.of("");

    @BeforeEach
    void fill() throws IOException {
        log = folder.resolve("log");
        Path pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        run("import", "--date", "2026-03-02", "--pelvis", pelvis);
        run("import", "--date", "2026-03-05", "--pelvis", pelvis);
    }

    @Test
    void openPain_standsFirstEverywhere_untilItIs0() {
        assertThat(firstLines()).noneMatch(line -> line.contains("Pain is open"));
        run("diary", "--date", "2026-03-03", "--pain", "left-knee=1");
        run("diary", "--date", "2026-03-06", "--pain", "right-knee=0");

        assertThat(firstLines()).hasSize(4).allMatch(line -> line.startsWith("! Pain is open: left knee"));
        assertThat(json("block").path("heed").path("stop").asBoolean()).isTrue();
        assertThat(json("block").path("nextSession").path("argued").asString()).isEqualTo("stop");
        assertThat(json("block").path("nextSession").path("higherBoxM").isNull())
                .isTrue();
        assertThat(json("session", "--date", "2026-03-02")
                        .path("heed")
                        .path("openPain")
                        .path(0)
                        .path("region")
                        .asString())
                .isEqualTo("left knee");
        assertThat(run("session", "--date", "2026-03-02", "--format", "csv").err())
                .contains("Pain is open");
        assertThat(run("athlete").err()).contains("Pain is open");
        assertThat(run("session", "--date", "2026-03-02", "--format", "html").out())
                .contains("Pain is open");
        assertThat(run("block", "--format", "html").out()).contains("Pain is open");

        assertThat(run("diary", "--date", "2026-03-08", "--pain", "Left Knee=0").err())
                .doesNotContain("Pain is open");
        assertThat(firstLines()).noneMatch(line -> line.contains("Pain is open"));
        assertThat(json("block").path("nextSession").path("argued").asString()).isNotEqualTo("stop");
    }

    @Test
    void aCliniciansLimit_standsBeforePain() {
        run("athlete", "--clinician-limit", "no drops above 0.5 m");
        run("diary", "--date", "2026-03-03", "--sign", "locking");

        assertThat(firstLines()).allMatch(line -> line.startsWith("! A clinician limits: no drops above 0.5 m"));
        assertThat(json("block").path("heed").path("sentences")).hasSize(2);
        assertThat(run("block", "--format", "html").out()).contains("A clinician limits");
        run("diary", "--date", "2026-03-04", "--sign", "none");
        assertThat(json("block").path("heed").path("stop").asBoolean()).isFalse();
    }

    @Test
    void aCorrection_standsInstead_andBothAreKept() throws IOException {
        run("diary", "--date", "2026-03-03", "--pain", "left knee=4");
        Path first = log.resolve("a/diary/2026-03-03/0001.json");
        String before = Files.readString(first);
        run("diary", "--date", "2026-03-03", "--pain", "left knee=0", "--note", "meant soreness", "--correct", "1");

        assertThat(firstLines()).noneMatch(line -> line.contains("Pain is open"));
        assertThat(first).hasContent(before);
        assertThat(run("diary").out())
                .contains("1  (corrected by a later entry) pain left knee 4 of 10")
                .contains("2  (instead of 1) pain left knee 0 of 10");
        assertThat(Ran.command(
                                "diary",
                                "--log",
                                log,
                                "--athlete",
                                "a",
                                "--date",
                                "2026-03-03",
                                "--note",
                                "x",
                                "--correct",
                                "7")
                        .status())
                .isEqualTo(2);
    }

    @Test
    void anEntryOfBeforeThereWereCorrections_isReadAsItIs() throws IOException {
        run("diary", "--date", "2026-03-03", "--note", "felt well");
        Path first = log.resolve("a/diary/2026-03-03/0001.json");
        String text = Files.readString(first);
        Files.writeString(first, text.replaceFirst(",\\s*\"corrects\" : null", ""));

        assertThat(Files.readString(first)).doesNotContain("corrects");
        assertThat(run("diary").out()).contains("felt well");
        assertThat(run("diary").err()).isEmpty();
    }

    @Test
    void aPlaceThatIsNotKnown_isKept_andSaid() {
        Ran ran = run("diary", "--date", "2026-03-03", "--pain", "left kne=2");

        assertThat(ran.err()).contains("'left kne' is none of the places").contains("Pain is open: left kne");
    }

    @Test
    void rulesThatCannotBeRead_areNamed_andTheRestIsShown() throws IOException {
        Files.writeString(log.resolve("rules.txt"), "step-up = 3 m\n");
        Ran block = run("block");

        assertThat(block.err()).contains("rules.txt").contains("step-up");
        assertThat(block.out()).contains("The program argues; you decide.");
        Files.writeString(log.resolve("rules.txt"), "step-up = 0.05 m\n");
        assertThat(run("block").out()).contains("step-up 0.05 m (set by you)");
    }

    @Test
    void reading_neverChangesARawFile() throws IOException {
        run("diary", "--date", "2026-03-03", "--pain", "left knee=4");
        Map<String, List<Byte>> before = files();
        for (String format : List.of("table", "csv", "json", "html", "vtt")) {
            run("session", "--date", "2026-03-02", "--format", format);
        }
        Files.delete(log.resolve("a/sessions/2026-03-02/results/landings.json"));
        for (String format : List.of("table", "json", "html")) {
            run("block", "--format", format);
        }
        run("athlete");
        run("diary");

        assertThat(files()).isEqualTo(before);
    }

    private Map<String, List<Byte>> files() throws IOException {
        Map<String, List<Byte>> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(log)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                List<Byte> bytes = new ArrayList<>();
                for (byte b : Files.readAllBytes(file)) {
                    bytes.add(b);
                }
                files.put(log.relativize(file).toString(), bytes);
            }
        }
        return files;
    }

    private List<String> firstLines() {
        return Stream.of(
                        run("session", "--date", "2026-03-02"),
                        run("session", "--date", "2026-03-05"),
                        run("block"),
                        run("diary"))
                .map(ran -> ran.out().lines().findFirst().orElse(""))
                .toList();
    }

    private JsonNode json(String command, Object... more) {
        List<Object> words = new ArrayList<>(List.of(more));
        words.addAll(List.of("--format", "json"));
        return mapper.readTree(run(command, words.toArray()).out());
    }

    private Ran run(String command, Object... more) {
        List<Object> words = new ArrayList<>(List.of(command, "--log", log, "--athlete", "a"));
        words.addAll(List.of(more));
        Ran ran = Ran.command(words.toArray());
        assertThat(ran.status()).as(ran.err()).isZero();
        return ran;
    }
}

package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fixtures.session.SessionFiles;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MainTest {

    @TempDir
    private Path folder;

    private Path pelvis = Path.of("");

    @BeforeEach
    void writeTable() throws IOException {
        pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "fly",
                "landings",
                "landings --pelvis PELVIS extra",
                "landings --pelvis PELVIS --filter best",
                "landings --pelvis PELVIS --format pdf",
                "landings --pelvis PELVIS --out NOWHERE/x.csv",
                "landings --pelvis PELVIS --out PELVIS",
                "landings --unknown",
                "orientation",
                "note --log LOG --athlete a --date 2026-03-02 --landing 1",
                "note --log LOG --athlete a --date 2026-03-02 --landing 3-2 --remark x",
                "note --log LOG --athlete a --date 2026-03-02 --landing 1 --height 60",
                "note --log LOG --athlete ../a --date 2026-03-02 --landing 1 --height 0.6",
                "note --log LOG --athlete a --date 2026-13-02 --landing 1 --height 0.6",
                "diary --log LOG --athlete a --date 2026-03-02 --soreness calf=11",
                "diary --log LOG --athlete a --date 2026-03-02 --soreness calf=2.5",
                "diary --log LOG --athlete a --date 2026-03-02 --pain knee",
                "diary --log LOG --athlete a --date 2026-03-02 --sign itching",
                "diary --log LOG --athlete a --date 2026-03-02 --effort 7",
                "diary --log LOG --athlete a --date 2026-03-02 --effort 11 --minutes 60",
                "diary --log LOG --athlete a --date 2026-03-02 --result reach=far",
                "diary --log LOG --athlete a --date 2026-03-02-2 --note x",
                "diary --log LOG --athlete a --note x",
                "block",
                "block --log LOG",
                "block --log LOG --athlete a --from 2026-03-02 --to 2026-03-01",
                "block --log LOG --athlete a --format csv",
                "athlete --log LOG --athlete a --born 12",
                "athlete --log LOG --athlete nobody --delete --yes",
                "session --log LOG --athlete a --date 2026-03-02 --format paper",
            })
    void wrongUsage_isTwoAndOneSentence(String line) {
        Ran ran = Ran.command(words(line));

        assertThat(ran.status()).isEqualTo(2);
        assertOneSentence(ran);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "landings --pelvis MISSING",
                "landings --pelvis FOLDER",
                "landings --pelvis EMPTY",
                "landings --pelvis PELVIS --upper-back MISSING",
                "landings --pelvis PELVIS --layout MISSING",
                "landings --pelvis PELVIS --layout PELVIS",
                "orientation --sensor MISSING --out OUT",
                "session --log LOG --athlete a --date 2026-03-02",
                "session --log PELVIS --athlete a --date 2026-03-02",
                "import --log LOG --athlete a --date 2026-03-02 --pelvis EMPTY",
                "import --log LOG --athlete a --date 2026-03-02 --pelvis PELVIS --notes EMPTY",
                "block --table MISSING",
                "block --table EMPTY",
            })
    void inputThatCannotBeUsed_isThreeAndOneSentence(String line) throws IOException {
        Files.writeString(folder.resolve("empty.csv"), "");
        Ran ran = Ran.command(words(line));

        assertThat(ran.status()).as(ran.err()).isEqualTo(3);
        assertOneSentence(ran);
        assertThat(folder.resolve("out.csv")).doesNotExist();
    }

    @ParameterizedTest
    @EnumSource(CommandName.class)
    void everyCommand_tellsWhatItTakes(CommandName name) {
        Ran ran = Ran.command(name.code(), "--help");

        assertThat(ran.status()).isZero();
        assertThat(ran.out()).startsWith("Usage: evenfall " + name.code());
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void helpAndVersion_goToStandardOutput() {
        assertThat(Ran.command("--help").out()).contains("landings").contains("Exit status");
        assertThat(Ran.command("--version").out()).startsWith("evenfall ");
    }

    @Test
    void landings_areWrittenInEveryFormat() throws IOException {
        Ran json = Ran.command("landings", "--pelvis", pelvis, "--format", "json");
        Ran csv = Ran.command("landings", "--pelvis", pelvis, "--format", "csv");
        Ran table = Ran.command("landings", "--pelvis", pelvis);
        Ran html = Ran.command("landings", "--pelvis", pelvis, "--format", "html");

        assertThat(List.of(json.status(), csv.status(), table.status(), html.status()))
                .containsOnly(0);
        assertThat(json.err() + csv.err() + table.err() + html.err()).isEmpty();
        JsonNode root = JsonMapper.builder().build().readTree(json.out());
        assertThat(root.path("recording").path("durationS").asDouble()).isEqualTo(9.99);
        assertThat(root.path("recording").path("rateHz").asDouble()).isEqualTo(100);
        assertThat(root.path("recording").path("findings"))
                .anyMatch(finding -> finding.path("code").asString().equals("no-upper-back"));
        assertThat(root.has("athlete")).isFalse();
        assertThat(csv.out()).startsWith("index,kind,");
        assertThat(table.out()).contains("upper back");
        assertThat(html.out()).startsWith("<!");

        Path out = folder.resolve("result.json");
        Ran file = Ran.command("landings", "--pelvis", pelvis, "--format", "json", "--out", out);
        assertThat(file.out()).isEmpty();
        assertThat(out).hasContent(json.out());
    }

    /** By a gyroscope read fifty times too small nothing turns, so every landing would be held. */
    @Test
    void noFormIsJudged_whereASensorIsReadInAWrongUnit() throws IOException {
        SessionFiles files = Tables.oneLanding(folder.resolve("session"), 6);
        List<String> lines = unpacked(files.pelvis());
        Path wrong = Files.writeString(
                folder.resolve("wrong.csv"),
                Stream.concat(Stream.of(lines.get(0)), lines.stream().skip(1).map(MainTest::turnRatesInRadians))
                        .collect(Collectors.joining("\n")));
        JsonMapper mapper = JsonMapper.builder().build();
        JsonNode right = mapper.readTree(Ran.command("landings", "--pelvis", files.pelvis(), "--format", "json")
                .out());
        JsonNode root = mapper.readTree(
                Ran.command("landings", "--pelvis", wrong, "--format", "json").out());

        assertThat(right.path("landings").path(0).path("form").asString()).isNotEmpty();
        assertThat(root.path("recording").path("findings"))
                .anyMatch(finding -> finding.path("code").asString().equals("units"));
        assertThat(root.path("landings"))
                .isNotEmpty()
                .allMatch(landing -> landing.path("form").isNull());
    }

    private static List<String> unpacked(Path file) throws IOException {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            return in.lines().toList();
        }
    }

    private static String turnRatesInRadians(String line) {
        String[] cells = line.split(",", -1);
        for (int i = cells.length - 3; i < cells.length; i++) {
            cells[i] = String.valueOf(Math.toRadians(Double.parseDouble(cells[i])));
        }
        return String.join(",", cells);
    }

    @Test
    void orientation_hasOneRowASample() throws IOException {
        Path out = folder.resolve("out.csv");
        for (String filter : List.of("two-pass", "live", "madgwick", "complementary")) {
            Ran ran = Ran.command("orientation", "--sensor", pelvis, "--filter", filter, "--out", out);

            assertThat(ran).isEqualTo(new Ran(0, "", ""));
            List<String> lines = Files.readAllLines(out);
            assertThat(lines).hasSize(1001);
            assertThat(lines.get(0)).isEqualTo("t_s,qw,qx,qy,qz");
            double norm = Stream.of(lines.get(500).split(",", -1))
                    .skip(1)
                    .mapToDouble(Double::parseDouble)
                    .map(value -> value * value)
                    .sum();
            assertThat(norm).isBetween(0.999, 1.001);
        }
    }

    @Test
    void whoStopsReading_endsTheCommandQuietly() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OutputStream closed = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("Broken pipe");
            }
        };
        int status = Main.run(
                new String[] {"landings", "--pelvis", pelvis.toString()},
                new PrintStream(closed, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8));

        assertThat(status).isZero();
        assertThat(err.size()).isZero();
    }

    @Test
    void aRawFileOfALog_isNeverAPlaceForResults() throws IOException {
        Path raw = Files.createDirectories(folder.resolve("log/a/sessions/2026-03-02/raw"));
        Path stored = Files.writeString(raw.resolve("pelvis.csv"), "raw");
        Ran ran = Ran.command("landings", "--pelvis", pelvis, "--out", stored);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(stored).hasContent("raw");
    }

    /** Simulated drops with known truth; the numbers of landings are those of its truth.json. */
    @Test
    void simulatedDrops_areAllPrinted() throws IOException {
        Path session = Tables.shared("landings/s1/truth.json").getParent();
        if (session == null) {
            throw new IllegalStateException("the file has a folder");
        }
        JsonMapper mapper = JsonMapper.builder().build();
        int truth = mapper.readTree(Files.readString(session.resolve("truth.json")))
                .path("landings")
                .size();
        Ran ran = Ran.command(
                "landings",
                "--pelvis",
                session.resolve("pelvis.csv.gz"),
                "--upper-back",
                session.resolve("upper-back.csv.gz"),
                "--format",
                "json");

        assertThat(ran.status()).isZero();
        JsonNode landings = mapper.readTree(ran.out()).path("landings");
        assertThat(truth).isPositive();
        assertThat(landings)
                .filteredOn(each -> each.path("kind").asString().equals("landing"))
                .hasSize(truth);
        assertThat(landings.path(0).path("spineFlexionDeg").path("change").isNumber())
                .isTrue();
    }

    private static void assertOneSentence(Ran ran) {
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err().strip()).endsWith(".").doesNotContain("Exception").doesNotContain("\tat ");
    }

    private Object[] words(String line) {
        return Stream.of(line.split(" ", -1))
                .filter(word -> !word.isEmpty())
                .map(word -> word.replace("PELVIS", pelvis.toString())
                        .replace("MISSING", folder.resolve("missing.csv").toString())
                        .replace("EMPTY", folder.resolve("empty.csv").toString())
                        .replace("NOWHERE", folder.resolve("nowhere").toString())
                        .replace("FOLDER", folder.toString())
                        .replace("LOG", folder.resolve("log").toString())
                        .replace("OUT", folder.resolve("out.csv").toString()))
                .toArray();
    }
}

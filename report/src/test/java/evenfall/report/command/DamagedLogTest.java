package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever a disk or a hand does to one file: it is named, left as it is, and everything else is still shown. */
class DamagedLogTest {

    @TempDir
    private Path folder;

    private Path log = Path.of("");

    @BeforeEach
    void fill() throws IOException {
        log = folder.resolve("log");
        Path pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        for (String id : List.of("a", "b")) {
            run("athlete", "--log", log, "--athlete", id, "--name", "Invented " + id, "--consent", "2026-03-01");
            for (String date : List.of("2026-03-02", "2026-03-05")) {
                run("import", "--log", log, "--athlete", id, "--date", date, "--pelvis", pelvis);
                run("note", "--log", log, "--athlete", id, "--date", date, "--landing", "1", "--remark", date);
                run("diary", "--log", log, "--athlete", id, "--date", date, "--note", "felt " + date);
            }
        }
    }

    @Test
    void everyKindOfFile_damagedInEveryWay_isNamedAndTheRestIsShown() throws IOException {
        int tried = 0;
        for (String file : List.of(
                "athlete/0001.json",
                "diary/2026-03-02/0001.json",
                "notes/2026-03-02/0001.json",
                "sessions/2026-03-02/session.json")) {
            Path damaged = log.resolve("a").resolve(file);
            byte[] whole = Files.readAllBytes(damaged);
            for (byte[] bytes : ways(whole)) {
                Files.write(damaged, bytes);
                String said = everythingElseIsShown();
                assertThat(said)
                        .as(file)
                        .contains(damaged.getFileName().toString())
                        .contains("left as it is");
                assertThat(damaged).hasBinaryContent(bytes);
                tried++;
            }
            Files.write(damaged, whole);
        }
        assertThat(tried).isEqualTo(4 * ways(new byte[2]).size());
        assertThat(everythingElseIsShown()).isEmpty();
    }

    @Test
    void damagedResults_areMadeAgainFromRawFiles_andDamagedRawFilesAreNamed() throws IOException {
        Path results = log.resolve("a/sessions/2026-03-02/results/landings.json");
        Path raw = log.resolve("a/sessions/2026-03-02/raw/pelvis.csv");
        byte[] whole = Files.readAllBytes(results);
        byte[] recorded = Files.readAllBytes(raw);
        for (byte[] bytes : ways(whole)) {
            Files.write(results, bytes);
            assertThat(everythingElseIsShown()).contains("made again");
            assertThat(results).hasBinaryContent(whole);
        }
        for (byte[] bytes : ways(recorded)) {
            Files.write(raw, bytes);
            Files.delete(results);
            assertThat(everythingElseIsShown()).contains("pelvis.csv");
            assertThat(raw).hasBinaryContent(bytes);
            Files.write(results, whole);
            // What was found while the recording was whole is still shown.
            assertThat(everythingElseIsShown()).isEmpty();
        }
    }

    @Test
    void aRawFileThatIsGone_isNamedWithItsSession_onceAndTheOthersAreShown() throws IOException {
        Files.delete(log.resolve("a/sessions/2026-03-02/raw/pelvis.csv"));
        Files.delete(log.resolve("a/sessions/2026-03-02/results/landings.json"));
        Ran block = read("block", "a", "--format", "json");

        assertThat(block.status()).isZero();
        JsonNode sessions = JsonMapper.builder().build().readTree(block.out()).path("sessions");
        assertThat(sessions.size()).isEqualTo(1);
        assertThat(sessions.path(0).path("date").asString()).isEqualTo("2026-03-05");
        assertThat(block.err())
                .containsOnlyOnce("2026-03-02 is left out of the block")
                .containsOnlyOnce("pelvis.csv of 2026-03-02 is missing")
                .contains("restore it from a copy");
    }

    private static List<byte[]> ways(byte[] whole) {
        byte[] half = Arrays.copyOf(whole, whole.length / 2);
        byte[] rubbish = new byte[512];
        new java.util.SplittableRandom(5).nextBytes(rubbish);
        List<byte[]> ways = new ArrayList<>(List.of(half, rubbish));
        for (String text :
                List.of("", "{", "[]", "3", "null", "{\"writtenAt\": [7]}", "\u0000\u0000", "{\"a\":".repeat(3000))) {
            ways.add(text.getBytes(StandardCharsets.UTF_8));
        }
        return ways;
    }

    /** Runs everything that reads; gives what was said of athlete a. */
    private String everythingElseIsShown() {
        Ran athletes = Ran.command("athlete", "--log", log);
        assertThat(athletes.status()).as(athletes.err()).isZero();
        assertThat(athletes.out()).contains("a ").contains("Invented b");
        StringBuilder said = new StringBuilder(athletes.err());
        for (String id : List.of("a", "b")) {
            Ran list = read("session", id);
            Ran diary = read("diary", id);
            Ran block = read("block", id, "--format", "json");
            Ran session = read("session", id, "--date", "2026-03-05", "--format", "json");
            Ran first = Ran.command("session", "--log", log, "--athlete", id, "--date", "2026-03-02");
            assertThat(first.status()).as(first.err()).isIn(id.equals("a") ? List.of(0, 3) : List.of(0));
            assertThat(list.out()).contains("2026-03-02").contains("2026-03-05");
            assertThat(diary.out()).contains("felt 2026-03-05");
            assertThat(block.out()).contains("\"2026-03-05\"");
            assertThat(session.out()).contains("felt 2026-03-05");
            if (id.equals("a")) {
                Stream.of(list, diary, block, session, first).map(Ran::err).forEach(said::append);
            }
        }
        assertThat(said.toString()).doesNotContain("Exception").doesNotContain("report this sentence");
        return said.toString().replaceAll("There are notes for landing.*\\R", "");
    }

    private Ran read(String command, String id, Object... more) {
        List<Object> words = new ArrayList<>(List.of(command, "--log", log, "--athlete", id));
        words.addAll(List.of(more));
        Ran ran = Ran.command(words.toArray());
        assertThat(ran.status()).as(command + ": " + ran.err()).isZero();
        return ran;
    }

    private static void run(Object... command) {
        Ran ran = Ran.command(command);
        assertThat(ran.status()).as(ran.err()).isZero();
    }
}

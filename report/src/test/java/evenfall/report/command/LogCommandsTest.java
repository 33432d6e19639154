package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LiveStore;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LogCommandsTest {

    private final JsonMapper mapper = JsonMapper.builder().build();

    @TempDir
    private Path folder;

    private Path pelvis = Path.of("");
    private Path log = Path.of("");

    @BeforeEach
    void writeTable() throws IOException {
        pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        log = folder.resolve("log");
    }

    @Test
    void anImportedSession_isThereWithNotesAndDiary() throws IOException {
        assertThat(note("2026-03-02", "1-2", "--side", "left", "--height", "0.6")
                        .status())
                .isZero();
        assertThat(diary("--soreness", "left calf=3", "--effort", "6", "--minutes", "70", "--result", "reach=31cm")
                        .status())
                .isZero();
        Ran imported = importSession("2026-03-02");
        Ran session = session("2026-03-02", "json");

        assertThat(imported.status()).as(imported.err()).isZero();
        assertThat(imported.err()).contains("consent");
        assertThat(log.resolve("invented/sessions/2026-03-02/raw/pelvis.csv")).hasSameBinaryContentAs(pelvis);
        JsonNode root = mapper.readTree(session.out());
        assertThat(root.path("athlete").asString()).isEqualTo("invented");
        assertThat(root.path("date").asString()).isEqualTo("2026-03-02");
        assertThat(root.path("diary").path(0).path("soreness").path("left calf").asInt())
                .isEqualTo(3);
        assertThat(root.path("diary").path(0).path("results").path("reach").asString())
                .isEqualTo("31 cm");
    }

    @Test
    void aDateStillToCome_isKeptAndTold() throws IOException {
        String ahead = LocalDate.now(ZoneId.systemDefault()).plusYears(1).toString();
        String past = LocalDate.now(ZoneId.systemDefault()).minusYears(1).toString();

        assertThat(importSession(ahead).err()).contains(ahead);
        assertThat(importSession(past).err()).doesNotContain(past);
        assertThat(log.resolve("invented/sessions/" + ahead + "/raw/pelvis.csv"))
                .hasSameBinaryContentAs(pelvis);
    }

    @Test
    void aSlipInAName_isToldWithTheNamesThereAre() throws IOException {
        assertThat(importSession("2026-03-02").err()).doesNotContain("is new in the log");

        Ran slip = Ran.command("block", "--log", log, "--athlete", "Invented2");

        assertThat(slip.status()).isZero();
        assertThat(slip.err()).contains("Invented2 is new in the log").contains("which holds invented;");
        assertThat(Ran.command("block", "--log", log, "--athlete", "Invented2").err())
                .doesNotContain("is new");
    }

    @Test
    void aNoteBeyondASession_isKeptAndTold() throws IOException {
        importSession("2026-03-02");
        Ran beyond = note("2026-03-02", "7", "--side", "left");

        assertThat(beyond.status()).isZero();
        assertThat(beyond.err()).contains("has no landing").contains("number 7");
    }

    @Test
    void aColumnThatIsNotKnown_isTold() throws IOException {
        Path table = Files.writeString(folder.resolve("notes.csv"), "landing,side,height\n1,left,0.4\n");
        Ran noted =
                Ran.command("note", "--log", log, "--athlete", "invented", "--date", "2026-03-02", "--notes", table);

        assertThat(noted.status()).as(noted.err()).isZero();
        assertThat(noted.err()).contains("'height'").contains("height_m");
    }

    @Test
    void aDateNobodyCanMean_isRefused() {
        Ran early = importSession("0026-03-02");

        assertThat(early.status()).isEqualTo(2);
        assertThat(early.err()).contains("0026-03-02");
        assertThat(log).doesNotExist();
    }

    @Test
    void aDateThatIsTaken_isRefusedAndNothingChanges() throws IOException {
        importSession("2026-03-02");
        Path raw = log.resolve("invented/sessions/2026-03-02/raw/pelvis.csv");
        byte[] before = Files.readAllBytes(raw);
        Files.writeString(pelvis, Files.readString(pelvis) + "10000,0,0,1,0,0,0\n");
        Ran again = importSession("2026-03-02");

        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("2026-03-02-2");
        assertThat(raw).hasBinaryContent(before);
        assertThat(importSession("2026-03-02-2").status()).isZero();
        assertThat(mapper.readTree(block().out()).path("sessions")).hasSize(2);
    }

    @Test
    void resultsThatWereThrownAway_areMadeAgain() throws IOException {
        importSession("2026-03-02");
        Ran before = session("2026-03-02", "json");
        Path results = log.resolve("invented/sessions/2026-03-02/results");
        Files.delete(results.resolve("landings.json"));
        Files.delete(results.resolve("traces.csv.gz"));
        Files.delete(results);
        Ran after = session("2026-03-02", "json");

        assertThat(after.out()).isEqualTo(before.out());
        assertThat(results.resolve("landings.json")).exists();
        assertThat(results.resolve("traces.csv.gz")).exists();
    }

    @Test
    void aPageOfStoredSignalsIsThePageOfTheRawFiles() throws IOException {
        importSession("2026-03-02");
        String stored = session("2026-03-02", "html").out();
        Path traces = log.resolve("invented/sessions/2026-03-02/results/traces.csv.gz");
        byte[] kept = Files.readAllBytes(traces);
        Files.delete(traces);
        String fresh = session("2026-03-02", "html").out();

        // A last digit may fall the other way; nothing else may.
        assertThat(withoutDigits(stored)).isEqualTo(withoutDigits(fresh));
        assertThat(traces).hasBinaryContent(kept);
    }

    private static String withoutDigits(String page) {
        return page.replaceAll("[0-9.]+", "#");
    }

    @Test
    void resultsOfAnotherVersion_areMadeAgainAndSaid() throws IOException {
        importSession("2026-03-02");
        Path results = log.resolve("invented/sessions/2026-03-02/results/landings.json");
        String current = Files.readString(results);
        Files.writeString(results, current.replaceFirst("\"version\" : \"[^\"]*\"", "\"version\" : \"0.0.9\""));
        Ran session = session("2026-03-02", "table");

        assertThat(session.status()).isZero();
        assertThat(session.err()).contains("0.0.9").contains("made again");
        assertThat(results).hasContent(current);
        assertThat(session("2026-03-02", "table").err()).isEmpty();
    }

    @Test
    void resultsThatAreDamagedOrLackAField_areMadeAgainAndSaid() throws IOException {
        importSession("2026-03-02");
        Path results = log.resolve("invented/sessions/2026-03-02/results/landings.json");
        String current = Files.readString(results);
        byte[][] damaged = {
            {},
            {(byte) 0xff, 0, 1},
            current.substring(0, current.length() / 2).getBytes(StandardCharsets.UTF_8),
            "[]".getBytes(StandardCharsets.UTF_8),
            current.replace("\"durationS\"", "\"duration\"").getBytes(StandardCharsets.UTF_8),
            current.replace("\"clock\"", "\"clocks\"").getBytes(StandardCharsets.UTF_8)
        };
        for (byte[] bytes : damaged) {
            Files.write(results, bytes);
            Ran session = session("2026-03-02", "json");

            assertThat(session.status()).as(session.err()).isZero();
            assertThat(session.err())
                    .isEqualTo(
                            "The results of 2026-03-02 could not be read and are made again." + System.lineSeparator());
            assertThat(results).hasContent(current);
        }
    }

    @Test
    void aPageOfResultsOfAnotherVersion_saysSoToo() throws IOException {
        importSession("2026-03-02");
        Path results = log.resolve("invented/sessions/2026-03-02/results/landings.json");
        Files.writeString(
                results, Files.readString(results).replaceFirst("\"version\" : \"[^\"]*\"", "\"version\" : \"0.0.9\""));

        assertThat(session("2026-03-02", "html").err()).contains("0.0.9").contains("made again");
    }

    @Test
    void aFileOfTheLogThatIsMissingOrDamaged_isNamedInPlainWords() throws IOException {
        importSession("2026-03-02");
        importSession("2026-03-05");
        Path manifest = log.resolve("invented/sessions/2026-03-02/session.json");
        String whole = Files.readString(manifest);
        String[] texts = {"", "{", "[]", "\u0001", "{\"program\": 3}", whole.replace("\"kind\"", "\"sort\"")};
        for (String text : texts) {
            Files.writeString(manifest, text);
            assertNamedAndPassedOver();
        }
        Files.write(manifest, new byte[] {(byte) 0xc3, 0x28});
        assertNamedAndPassedOver();
        Files.delete(manifest);
        assertNamedAndPassedOver();
    }

    private void assertNamedAndPassedOver() throws IOException {
        Ran session = session("2026-03-02", "json");
        Ran block = block();

        assertThat(session.status()).as(session.err()).isEqualTo(3);
        assertThat(session.out()).isEmpty();
        assertThat(session.err().lines()).hasSize(1);
        assertThat(session.err())
                .contains("session.json")
                .doesNotContain("Feature")
                .doesNotContain("evenfall.report")
                .doesNotContain("java.");
        assertThat(block.status()).as(block.err()).isZero();
        assertThat(mapper.readTree(block.out()).path("sessions")).hasSize(1);
    }

    @Test
    void whatIsNoNumber_isCalledSo() {
        Ran note = note("2026-03-02", "1", "--height", "high");

        assertThat(note.status()).isEqualTo(2);
        assertThat(note.err()).contains("'high' is not a number").doesNotContain("double");
    }

    @Test
    void aSessionOfOneDamagedFile_isNamed_andTheOthersStandInTheBlock() throws IOException {
        importSession("2026-03-02");
        importSession("2026-03-05");
        Files.writeString(log.resolve("invented/sessions/2026-03-02/session.json"), "{");
        Ran session = session("2026-03-02", "json");
        Ran block = block();

        assertThat(session.status()).isEqualTo(3);
        assertThat(session.err()).contains("session.json");
        assertThat(block.status()).isZero();
        assertThat(block.err()).contains("session.json");
        assertThat(mapper.readTree(block.out()).path("sessions")).hasSize(1);
    }

    @Test
    void anInputThatCannotBeUsed_leavesNoSession() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.csv"), "t_ms,ax_g\n1,2\n");
        Ran ran = Ran.command(
                "import", "--log", log, "--athlete", "invented", "--date", "2026-03-02", "--pelvis", broken);

        assertThat(ran.status()).isEqualTo(3);
        assertThat(log.resolve("invented/sessions")).isEmptyDirectory();
    }

    @Test
    void effortAndMinutes_standInTheBlock() throws IOException {
        importSession("2026-03-02");
        importSession("2026-03-02-2");
        diary("--effort", "6", "--minutes", "70");
        JsonNode sessions = mapper.readTree(block().out()).path("sessions");

        assertThat(sessions.path(0).path("effortMinutes").asDouble()).isEqualTo(420);
        assertThat(sessions.path(1).path("effortMinutes").isNull()).isTrue();
    }

    @Test
    void theDiary_printsWhatWasEntered_andPainIsAnswered() {
        Ran entered = diary("--pain", "right knee=2", "--cue", "quiet feet");
        Ran printed = diary();

        assertThat(entered.status()).isZero();
        assertThat(entered.out()).isEmpty();
        assertThat(entered.err()).contains("no more drops").contains("licensed practitioner");
        assertThat(printed.out())
                .contains("2026-03-02")
                .contains("pain right knee 2 of 10")
                .contains("cue: quiet feet");
    }

    @Test
    void anEmptyLog_givesAnEmptyBlockAndDiary() {
        assertThat(block().status()).isZero();
        assertThat(diary().out()).isEqualTo("The diary is empty.\n");
        assertThat(log.resolve("invented")).isDirectory();
    }

    @Test
    void anAthlete_isNoted_printedAndDeleted() throws IOException {
        importSession("2026-03-02");
        Ran noted = athlete("--name", "Invented One", "--born", "2001", "--consent", "2026-03-01");
        Ran limited = athlete("--clinician-limit", "no drops above 0.5 m");
        Ran asked = athlete("--delete");

        assertThat(noted.out()).contains("Invented One").contains("2001");
        assertThat(limited.out()).contains("Invented One").contains("no drops above 0.5 m");
        assertThat(importSession("2026-03-03").err()).doesNotContain("consent");
        assertThat(asked.status()).isEqualTo(2);
        assertThat(log.resolve("invented")).isDirectory();
        Ran deleted = athlete("--delete", "--yes");
        assertThat(deleted.status()).isZero();
        assertThat(deleted.out()).contains("2 sessions");
        assertThat(log).isEmptyDirectory();
    }

    /** What is being recorded in another window is not deleted under its hands. */
    @Test
    void anAthleteWhoIsBeingRecorded_isNotDeleted() throws IOException {
        athlete("--name", "Invented One");
        AthleteFolder invented = TrainingLog.open(log).athlete("invented");
        SessionDate date = SessionDate.parse("2026-03-02").orElseThrow();
        Path raw = LiveStore.begin(invented.session(date), "evenfall", "2026-03-02T10:00:00+01:00");
        Path growing = Files.write(raw.resolve("pelvis.wire"), new byte[] {1, 2, 3});

        Ran refused = athlete("--delete", "--yes");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("may still be recorded");
        assertThat(growing).isRegularFile();

        Files.setLastModifiedTime(growing, FileTime.from(Instant.now().minusSeconds(30)));
        assertThat(athlete("--delete", "--yes").status()).isZero();
        assertThat(log).isEmptyDirectory();
    }

    @Test
    void aTableOfNotes_isTakenInWithTheImport() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.csv"), "landing,side,leave_out\n1,left,slipped\n");
        Ran ran = Ran.command(
                "import",
                "--log",
                log,
                "--athlete",
                "invented",
                "--date",
                "2026-03-02",
                "--pelvis",
                pelvis,
                "--notes",
                notes);

        assertThat(ran.status()).isZero();
        assertThat(Files.readString(log.resolve("invented/notes/2026-03-02/0001.json")))
                .contains("slipped")
                .contains("\"left\"");
        assertThat(session("2026-03-02", "json").err()).contains("notes for landing 1");
    }

    private Ran importSession(String date) {
        return Ran.command("import", "--log", log, "--athlete", "invented", "--date", date, "--pelvis", pelvis);
    }

    private Ran session(String date, String format) {
        return Ran.command("session", "--log", log, "--athlete", "invented", "--date", date, "--format", format);
    }

    private Ran block() {
        return Ran.command("block", "--log", log, "--athlete", "invented", "--format", "json");
    }

    private Ran note(String date, String landing, Object... more) {
        return with(more, "note", "--log", log, "--athlete", "invented", "--date", date, "--landing", landing);
    }

    private Ran diary(Object... more) {
        return with(more, "diary", "--log", log, "--athlete", "invented", "--date", "2026-03-02");
    }

    private Ran athlete(Object... more) {
        return with(more, "athlete", "--log", log, "--athlete", "invented");
    }

    private static Ran with(Object[] more, Object... first) {
        Object[] all = new Object[first.length + more.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return Ran.command(all);
    }
}

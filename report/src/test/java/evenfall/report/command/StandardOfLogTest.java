package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Side;
import evenfall.report.json.LandingsDocument;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What an athlete of a log is judged by: the coach's files, approved landings, and what the diary says of pain. */
class StandardOfLogTest {

    private static final List<String> DATES = List.of("2026-03-02", "2026-03-05", "2026-03-09");

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final SplittableRandom random = new SplittableRandom(1);

    @TempDir
    private Path folder;

    private Path log = Path.of("");

    /** Three sessions of ten two-footed landings from 0.3 m that lean about 4 degrees right, and one that leans 6.5. */
    @BeforeEach
    void fillLog() throws IOException {
        log = folder.resolve("log");
        Path pelvis = Tables.quiet(folder.resolve("pelvis.csv"));
        for (String date : DATES) {
            Ran imported = run("import", "--date", date, "--pelvis", pelvis);
            assertThat(imported.status()).as(imported.err()).isZero();
            List<SessionLanding> landings = new ArrayList<>();
            for (int i = 1; i <= 11; i++) {
                double lean = i == 11 ? 6.5 : 3.8 + 0.04 * i;
                landings.add(InventedSessions.landing(i, 60 + 25.0 * i, 0.3, Side.BOTH, lean, random));
            }
            Session invented = InventedSessions.session(landings, List.of(), List.of());
            Files.writeString(
                    log.resolve("ada/sessions").resolve(date).resolve("results/landings.json"),
                    LandingsDocument.of(invented));
        }
    }

    @Test
    void approvedLandings_giveTheAthleteLimitsOfItsOwn_inSessionAndBlockAlike() {
        assertThat(form("2026-03-02", 11)).isEqualTo("strained");
        approve("1-10", "yes");

        JsonNode lean = limit("2026-03-02");
        assertThat(lean.path("source").asString()).isEqualTo("own");
        assertThat(lean.path("usual").path("landings").asInt()).isEqualTo(30);
        assertThat(lean.path("usual").path("sessions").asInt()).isEqualTo(3);
        assertThat(form("2026-03-02", 11)).isEqualTo("held");
        assertThat(run("session", "--date", "2026-03-02").out())
                .contains("within the own limit by the baseline, 7.0°, but past 6°")
                .contains("Own limits come of 30 low, pain-free landings of 3 sessions that the coach approved.");
        assertThat(run("block", "--format", "json").out()).contains("Form was held in every landing");
    }

    @Test
    void approval_canBeTakenBack() {
        approve("1-10", "yes");
        approve("3-10", "no");

        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("starting");
        assertThat(run("session", "--date", "2026-03-02").out())
                .contains(
                        "6 low, pain-free landings are approved for the baseline, of 3 sessions; own limits begin with 20");
    }

    @Test
    void landingsOfADayWithPain_orWithPainNotYetGone_areNoBaseline() {
        approve("1-10", "yes");
        diary("2026-03-01", "right knee=2");
        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("starting");

        diary("2026-03-02", "right knee=0");
        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("own");
        diary("2026-03-09", "left ankle=1");
        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("starting");
    }

    @Test
    void landingsFromHigher_areNoBaseline_unlessTheCoachSaysSo() throws IOException {
        approve("1-10", "yes");
        for (String date : DATES) {
            run("note", "--date", date, "--landing", "1-10", "--height", "0.5");
        }
        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("starting");

        Files.writeString(log.resolve("ada/limits.txt"), "low-height = 0.5\n");
        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("own");
    }

    @Test
    void theCoachsFile_goesBeforeTheBaseline_andOneThatCannotBeReadIsNamedAndTheRestIsShown() throws IOException {
        approve("1-10", "yes");
        Files.writeString(log.resolve("limits.txt"), "trunk-lean = 5\n");

        assertThat(limit("2026-03-02").path("source").asString()).isEqualTo("coach");
        assertThat(form("2026-03-02", 11)).isEqualTo("strained");
        Files.writeString(log.resolve("ada/limits.txt"), "trunk-lean = five\n");
        for (String command : List.of("session --date 2026-03-02", "block")) {
            Ran ran = run(command.split(" ", -1)[0], (Object[]) tail(command));
            assertThat(ran.status()).isZero();
            assertThat(ran.err())
                    .containsOnlyOnce("ada/limits.txt, line 1: 'five' is no figure for trunk-lean")
                    .contains("judged by what a coach starts from");
        }
        JsonNode next = JsonMapper.builder()
                .build()
                .readTree(run("block", "--format", "json").out())
                .path("nextSession");
        assertThat(next.path("higherBoxM").isNull()).isTrue();
        assertThat(next.path("noHigherBox").toString()).contains("Part of what was entered cannot be read.");
        // A session to be kept is never turned away for it.
        Ran imported = run("import", "--date", "2026-03-12", "--pelvis", folder.resolve("pelvis.csv"));
        assertThat(imported.status()).isZero();
        assertThat(imported.err()).contains("'five' is no figure").contains("judged by what a coach starts from");
    }

    @Test
    void notesTable_mayApprove() throws IOException {
        Path notes =
                Files.writeString(folder.resolve("notes.csv"), "landing,side,baseline\n1,left,yes\n2,right,no\n3,,\n");

        Ran imported =
                run("import", "--date", "2026-03-12", "--pelvis", folder.resolve("pelvis.csv"), "--notes", notes);

        assertThat(imported.status()).as(imported.err()).isZero();
        assertThat(log.resolve("ada/baseline/2026-03-12/0001.json"))
                .content()
                .contains("\"approved\" : true", "\"approved\" : false");
        Files.writeString(notes, "landing,baseline\n1,maybe\n");
        assertThat(run("import", "--date", "2026-03-13", "--pelvis", folder.resolve("pelvis.csv"), "--notes", notes)
                        .err())
                .contains("notes.csv, line 2: 'maybe' in column 'baseline' is neither yes nor no");
        assertThat(run("note", "--date", "2026-03-12", "--landing", "1", "--baseline", "maybe")
                        .status())
                .isEqualTo(CommandRunner.WRONG_USAGE);
    }

    private void approve(String landings, String word) {
        for (String date : DATES) {
            assertThat(run("note", "--date", date, "--landing", landings, "--baseline", word)
                            .status())
                    .isZero();
        }
    }

    private void diary(String date, String pain) {
        assertThat(run("diary", "--date", date, "--pain", pain).status()).isZero();
    }

    private JsonNode session(String date) {
        return mapper.readTree(
                run("session", "--date", date, "--format", "json").out());
    }

    private JsonNode limit(String date) {
        for (JsonNode limit : session(date).path("limits")) {
            String footing = limit.path("footing").isNull()
                    ? "both-feet"
                    : limit.path("footing").asString();
            if (limit.path("measure").asString().equals("trunkLeanDeg.change") && footing.equals("both-feet")) {
                return limit;
            }
        }
        throw new AssertionError("no limit of trunk lean");
    }

    private String form(String date, int landing) {
        return session(date).path("landings").path(landing - 1).path("form").asString();
    }

    private static String[] tail(String command) {
        String[] words = command.split(" ", -1);
        return Arrays.copyOfRange(words, 1, words.length);
    }

    private Ran run(String command, Object... more) {
        List<Object> words = new ArrayList<>(List.of(command, "--log", log, "--athlete", "ada"));
        words.addAll(List.of(more));
        return Ran.command(words.toArray());
    }
}

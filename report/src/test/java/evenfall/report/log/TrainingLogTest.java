package evenfall.report.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import evenfall.fusion.landing.Side;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrainingLogTest {

    private static final SessionDate DATE = SessionDate.parse("2026-03-02").orElseThrow();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {"..", ".", "", "a/b", "a\\b", "../x", ".hidden", "a.", "con", "Aux.x", "com1", "a b", "a\u0000"})
    void namesThatCouldLeadElsewhere_areNoAthletes(String id) throws IOException {
        TrainingLog log = TrainingLog.open(folder.resolve("log"));

        assertThat(TrainingLog.isAthleteId(id)).isFalse();
        assertThatThrownBy(() -> log.athlete(id)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "A-01", "anna.b", "Jürgen", "3", "console"})
    void ordinaryNames_areAthletes(String id) {
        assertThat(TrainingLog.isAthleteId(id)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-3-2", "2026-02-30", "2026-03-02-0", "2026-03-02-01", "2026-03-02-1000", "today", ""})
    void datesThatAreNone_areRefused(String text) {
        assertThat(SessionDate.parse(text)).isEmpty();
    }

    @Test
    void sessionsOfOneDay_standInOrderOfTheirNumber() {
        List<SessionDate> dates = Stream.of("2026-03-02-10", "2026-03-03", "2026-03-02-2", "2026-03-02")
                .map(text -> SessionDate.parse(text).orElseThrow())
                .sorted()
                .toList();

        assertThat(dates)
                .map(SessionDate::toString)
                .containsExactly("2026-03-02", "2026-03-02-2", "2026-03-02-10", "2026-03-03");
        assertThat(DATE.next()).hasToString("2026-03-02-2");
    }

    @Test
    void aStoredSession_holdsTheRawBytesAndTheirChecksum() throws IOException {
        AthleteFolder athlete = athlete();
        Path file = Files.writeString(folder.resolve("Sensor one.CSV.gz"), "abc");
        SessionStore.store(
                athlete.session(DATE), "evenfall test", "now", Map.of("pelvis", file), Map.of("r.json", "{}"));

        Manifest manifest = athlete.session(DATE).manifest();
        RawFile raw = manifest.files().get(0);
        assertThat(raw.name()).isEqualTo("pelvis.CSV.gz");
        assertThat(raw.original()).isEqualTo("Sensor one.CSV.gz");
        // The published example of SHA-256 for the message "abc" (FIPS 180-2, appendix B.1).
        assertThat(raw.sha256()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(athlete.session(DATE).raw(raw.name())).hasContent("abc");
        assertThat(athlete.session(DATE).result("r.json")).contains("{}");
        assertThat(athlete.sessions()).containsExactly(DATE);
    }

    @Test
    void aSessionThatCouldNotBeStoredWhole_isNotThere() throws IOException {
        AthleteFolder athlete = athlete();
        Path file = Files.writeString(folder.resolve("a.csv"), "abc");
        assertThatThrownBy(() -> SessionStore.store(
                        athlete.session(DATE),
                        "evenfall test",
                        "now",
                        Map.of("pelvis", file, "upper-back", folder.resolve("missing.csv")),
                        Map.of()))
                .isInstanceOf(IOException.class);

        assertThat(athlete.sessions()).isEmpty();
        assertThat(athlete.folder().resolve("sessions")).isEmptyDirectory();
    }

    @Test
    void whatAKilledProgramLeft_isPassedOverAndClearedAway() throws IOException {
        AthleteFolder athlete = athlete();
        Path left =
                athlete.folder().resolve("sessions").resolve(".2026-03-02.part").resolve("raw");
        Files.createDirectories(left);
        Files.writeString(left.resolve("pelvis.csv"), "half");
        assertThat(athlete.sessions()).isEmpty();

        Path file = Files.writeString(folder.resolve("a.csv"), "abc");
        SessionStore.store(athlete.session(DATE), "evenfall test", "now", Map.of("pelvis", file), Map.of());

        assertThat(athlete.session(DATE).raw("pelvis.csv")).hasContent("abc");
        assertThat(left).doesNotExist();
    }

    @Test
    void entries_areAddedAndNeverChanged() throws IOException {
        AthleteFolder athlete = athlete();
        List<String> damaged = new ArrayList<>();
        athlete.diary(DATE.day()).add(diary("first"));
        Path first = athlete.folder().resolve("diary/2026-03-02/0001.json");
        String before = Files.readString(first);
        athlete.diary(DATE.day()).add(diary("second"));

        assertThat(first).hasContent(before);
        assertThat(athlete.diary(damaged::add).get(LocalDate.of(2026, 3, 2)))
                .extracting(DiaryEntry::note)
                .containsExactly("first", "second");
        assertThat(damaged).isEmpty();
    }

    @Test
    void aDamagedEntry_isNamedAndLeftAlone() throws IOException {
        AthleteFolder athlete = athlete();
        athlete.diary(DATE.day()).add(diary("first"));
        Path second = athlete.folder().resolve("diary/2026-03-02/0002.json");
        Files.writeString(second, "{\"writtenAt\": \"x\", ");
        athlete.diary(DATE.day()).add(diary("third"));
        List<String> damaged = new ArrayList<>();

        assertThat(athlete.diary(DATE.day()).all(damaged::add))
                .extracting(DiaryEntry::note)
                .containsExactly("first", "third");
        assertThat(damaged).hasSize(1);
        assertThat(damaged.get(0)).contains("0002.json");
        assertThat(second).hasContent("{\"writtenAt\": \"x\", ");
    }

    @Test
    void aLaterNote_isLaidOverAnEarlierOne() {
        NoteEntry first = new NoteEntry(
                "a",
                "command",
                List.of(new RangeNote(1, 3, new LandingNote(Side.LEFT, 0.4, "mat", null, "slipped", null))));
        NoteEntry second = new NoteEntry(
                "b", "command", List.of(new RangeNote(2, 2, new LandingNote(null, 0.6, null, null, "no", ""))));
        Map<Integer, LandingNote> notes = Notes.of(List.of(first, second));

        assertThat(notes.get(1)).isEqualTo(new LandingNote(Side.LEFT, 0.4, "mat", null, "slipped", null));
        assertThat(notes.get(2)).isEqualTo(new LandingNote(Side.LEFT, 0.6, "mat", null, "no", null));
        assertThat(notes.values()).extracting(LandingNote::leftOut).containsExactly(true, false, true);
        assertThat(notes).doesNotContainKey(4);
    }

    @Test
    void aTableOfNotes_isRead_andASlipIsNamed() {
        List<RangeNote> notes = NotesTable.read("n.csv", "landing;side;height_m;remark\n2;Left;0,6;good\n3;;;\n");

        assertThat(notes)
                .containsExactly(
                        new RangeNote(2, 2, new LandingNote(Side.LEFT, 0.6, null, null, null, "good")),
                        new RangeNote(3, 3, LandingNote.NONE));
        assertThatThrownBy(() -> NotesTable.read("n.csv", "landing,height_m\n1,60\n"))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining("line 2")
                .hasMessageContaining("metres");
        assertThatThrownBy(() -> NotesTable.read("n.csv", "landing\n0\n")).hasMessageContaining("counted from 1");
        assertThatThrownBy(() -> NotesTable.read("n.csv", "number\n1\n")).hasMessageContaining("no column 'landing'");
    }

    @Test
    void twoWriters_waitForEachOther() throws Exception {
        AthleteFolder athlete = athlete();
        CountDownLatch inside = new CountDownLatch(1);
        CountDownLatch leave = new CountDownLatch(1);
        FutureTask<String> first = new FutureTask<>(() -> athlete.locked(sentence -> {}, () -> {
            inside.countDown();
            await(leave);
            return "first";
        }));
        new Thread(first, "first writer").start();
        inside.await();
        List<String> told = new ArrayList<>();

        assertThatThrownBy(() -> LogLock.take(athlete.folder(), Duration.ZERO, told::add))
                .isInstanceOf(LogBusyException.class);
        FutureTask<String> second = new FutureTask<>(() -> athlete.locked(
                sentence -> {
                    told.add(sentence);
                    leave.countDown();
                },
                () -> "second"));
        new Thread(second, "second writer").start();

        assertThat(result(second)).isEqualTo("second");
        assertThat(result(first)).isEqualTo("first");
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).contains("waiting");
    }

    @Test
    void filesOfALog_areTheirOwnersAlone() throws IOException {
        Assumptions.assumeTrue(
                folder.getFileSystem().supportedFileAttributeViews().contains("posix"),
                "this file system keeps no owner's permissions");
        AthleteFolder athlete = athlete();
        athlete.diary(DATE.day()).add(diary("x"));

        try (Stream<Path> all = Files.walk(folder.resolve("log"))) {
            for (Path path : all.toList()) {
                String permissions = PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
                assertThat(permissions).as(path.toString()).endsWith("------");
            }
        }
    }

    @Test
    void aFileWrittenWhole_replacesTheOldOneOnlyWhenItIsDone() throws IOException {
        Path target = Files.writeString(folder.resolve("result.txt"), "old");
        assertThatThrownBy(() -> WholeFile.write(target, out -> {
                    out.write('n');
                    throw new IOException("disk full");
                }))
                .isInstanceOf(IOException.class);
        assertThat(target).hasContent("old");

        WholeFile.write(target, out -> out.write('n'));
        assertThat(target).hasContent("n");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(path -> path.getFileName().toString())).containsExactly("result.txt");
        }
    }

    @Test
    void removal_saysWhatGoes_andTakesAllOfIt() throws IOException {
        AthleteFolder athlete = athlete();
        athlete.diary(DATE.day()).add(diary("x"));
        AthleteRemoval removal = AthleteRemoval.of(athlete);

        assertThat(removal.describe()).isEqualTo("0 sessions, diary, notes and results, 1 file of together 1 kB");
        removal.perform(sentence -> {});
        assertThat(folder.resolve("log")).isEmptyDirectory();
    }

    private AthleteFolder athlete() throws IOException {
        AthleteFolder athlete = TrainingLog.open(folder.resolve("log")).athlete("invented");
        athlete.create();
        return athlete;
    }

    private static DiaryEntry diary(String note) {
        return new DiaryEntry(
                "2026-03-02T18:00:00Z", Map.of("calf", 1), Map.of(), List.of(), null, null, Map.of(), null, note);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static <T> T result(FutureTask<T> task) throws InterruptedException, ExecutionException {
        return task.get();
    }
}

package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.NoteEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Lets two programs at a time write to one log and kills each at a random moment, again and again. */
final class KilledLog {

    private final Path folder;
    private final SplittableRandom random;
    private final List<String> confirmed = new ArrayList<>();
    private int kills;
    private int started;

    KilledLog(Path folder, long seed) {
        this.folder = folder;
        this.random = new SplittableRandom(seed);
    }

    /** How many commands said they were done. */
    int confirmed() {
        return confirmed.size();
    }

    /** How many programs were killed. */
    int kills() {
        return kills;
    }

    /**
     * Two programs at a time, each killed.
     *
     * @param rounds how often
     * @param latestMs longest life after the first command was done, ms
     */
    void run(int rounds, int latestMs) throws IOException, InterruptedException {
        Path recording = Tables.quiet(folder.resolve("pelvis.csv"));
        Path exports = Files.createDirectories(folder.resolve("exports"));
        for (int round = 0; round < rounds; round++) {
            List<Process> programs = new ArrayList<>();
            List<Path> told = new ArrayList<>();
            try {
                for (String which : List.of("a", "b")) {
                    String mark = "r" + round + which;
                    told.add(folder.resolve(mark + ".txt"));
                    programs.add(start(recording, exports, mark, told));
                }
                for (int i = 0; i < programs.size(); i++) {
                    kill(programs.get(i), told.get(i), latestMs);
                }
            } finally {
                programs.forEach(Process::destroyForcibly);
            }
        }
    }

    private void kill(Process program, Path told, int latestMs) throws IOException, InterruptedException {
        while (program.isAlive() && Files.size(told) == 0) {
            Thread.sleep(5);
        }
        boolean ended = program.waitFor(random.nextInt(latestMs), TimeUnit.MILLISECONDS);
        assertThat(ended)
                .as("the program ended by itself: " + Files.readString(told))
                .isFalse();
        program.destroyForcibly().waitFor();
        kills++;
        for (String line : Files.readAllLines(told)) {
            // A line cut short by the kill confirms nothing.
            if (line.matches("0 \\S+ \\S+ \\d{4}-\\d\\d-\\d\\d")) {
                confirmed.add(line);
            } else {
                assertThat(line).as("a command failed").startsWith("0");
            }
        }
    }

    private Process start(Path recording, Path exports, String mark, List<Path> told) throws IOException {
        started++;
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LogWorker.class.getName(),
                        folder.resolve("log").toString(),
                        recording.toString(),
                        exports.toString(),
                        mark,
                        Long.toString(random.nextLong()),
                        Integer.toString(started * 400))
                .redirectOutput(told.get(told.size() - 1).toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Everything that was confirmed is there and whole, nothing is half there, and the log works on. */
    void check() throws IOException {
        AthleteFolder athlete = TrainingLog.open(folder.resolve("log")).athlete("a");
        List<String> damaged = new ArrayList<>();
        List<String> diary = athlete.diary(damaged::add).values().stream()
                .flatMap(List::stream)
                .map(DiaryEntry::note)
                .toList();
        List<String> names =
                athlete.who().all(damaged::add).stream().map(AthleteEntry::name).toList();
        List<String> remarks = athlete.notes(SessionDate.parse("2026-01-01").orElseThrow()).all(damaged::add).stream()
                .map(NoteEntry::notes)
                .flatMap(List::stream)
                .map(range -> range.note().remark())
                .toList();
        for (String line : confirmed) {
            String[] words = line.split(" ", -1);
            switch (words[1]) {
                case "diary" -> assertThat(diary).as(line).contains(words[2]);
                case "athlete" -> assertThat(names).as(line).contains(words[2]);
                case "note" -> assertThat(remarks).as(line).contains(words[2]);
                case "import" ->
                    assertThat(athlete.sessions())
                            .map(SessionDate::toString)
                            .as(line)
                            .contains(words[3]);
                default -> {
                    // A list of sessions leaves nothing; exports are looked at below.
                }
            }
        }
        for (SessionDate date : athlete.sessions()) {
            Ran ran = Ran.command("session", "--log", folder.resolve("log"), "--athlete", "a", "--date", date);
            assertThat(ran.status()).as(date + ": " + ran.err()).isZero();
            assertThat(athlete.session(date).rawFolder().resolve("pelvis.csv"))
                    .hasSameBinaryContentAs(folder.resolve("pelvis.csv"));
        }
        assertThat(damaged).isEmpty();
        checkExports();
        Ran next = Ran.command(
                "import",
                "--log",
                folder.resolve("log"),
                "--athlete",
                "a",
                "--date",
                "2020-01-01",
                "--pelvis",
                folder.resolve("pelvis.csv"));
        assertThat(next.status()).as(next.err()).isZero();
        try (Stream<Path> left = Files.list(athlete.folder().resolve("sessions"))) {
            assertThat(left.filter(path -> String.valueOf(path.getFileName()).startsWith(".")))
                    .isEmpty();
        }
    }

    private void checkExports() throws IOException {
        List<String> marks = confirmed.stream()
                .filter(line -> line.startsWith("0 export "))
                .map(line -> line.split(" ", -1)[2] + ".zip")
                .toList();
        List<Path> files;
        try (Stream<Path> all = Files.list(folder.resolve("exports"))) {
            files = all.filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    .toList();
        }
        assertThat(files).map(file -> String.valueOf(file.getFileName())).containsAll(marks);
        for (Path file : files) {
            try (ZipFile zip = new ZipFile(file.toFile())) {
                for (ZipEntry entry : Collections.list(zip.entries())) {
                    try (InputStream in = zip.getInputStream(entry)) {
                        assertThat(in.transferTo(OutputStream.nullOutputStream()))
                                .isEqualTo(entry.getSize());
                    }
                }
            }
        }
    }

    /** Arguments: a new folder, how often two programs are killed, the seed. */
    public static void main(String[] args) throws IOException, InterruptedException {
        KilledLog killed = new KilledLog(Files.createDirectories(Path.of(args[0])), Long.parseLong(args[2]));
        killed.run(Integer.parseInt(args[1]), 2500);
        killed.check();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println(killed.kills() + " programs killed; " + killed.confirmed()
                + " commands had said they were done; all of it is there, whole, and nothing is half there");
    }
}

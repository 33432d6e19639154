package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fixtures.demo.DemoBlock;
import evenfall.fixtures.demo.DemoSession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;

/** Makes a log of many athletes and sessions; {@code bench/large-log} times what is read from it. */
final class LargeLogBenchmark {

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 6);

    private LargeLogBenchmark() {}

    /** Arguments: a new folder, how many athletes, how many sessions each. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path log = folder.resolve("log");
        DemoSession demo = DemoBlock.write(folder.resolve("demo"), 1).sessions().get(8);
        run(
                "import",
                "--log",
                log,
                "--athlete",
                "model",
                "--date",
                "2020-01-01",
                "--pelvis",
                demo.pelvis(),
                "--upper-back",
                demo.upperBack(),
                "--notes",
                demo.notesFile());
        run(
                "diary",
                "--log",
                log,
                "--athlete",
                "model",
                "--date",
                "2020-01-01",
                "--soreness",
                "right calf=2",
                "--pain",
                "left ankle=0",
                "--effort",
                "6",
                "--minutes",
                "60",
                "--result",
                "squats=12 reps",
                "--cue",
                "quiet");
        Path model = log.resolve("model");
        for (int a = 0; a < Integer.parseInt(args[1]); a++) {
            String id = String.format(Locale.ROOT, "athlete-%02d", a);
            run("athlete", "--log", log, "--athlete", id, "--name", "Invented " + a, "--consent", "2025-01-01");
            for (int s = 0; s < Integer.parseInt(args[2]); s++) {
                String date = FIRST.plusDays(4L * s).toString();
                Path session = log.resolve(id).resolve("sessions").resolve(date);
                Files.createDirectories(session.resolve("raw"));
                Files.createDirectories(session.resolve("results"));
                copy(model.resolve("sessions/2020-01-01/session.json"), session.resolve("session.json"), date);
                copy(
                        model.resolve("sessions/2020-01-01/results/landings.json"),
                        session.resolve("results/landings.json"),
                        date);
                for (String kind : new String[] {"diary", "notes"}) {
                    Path to = Files.createDirectories(
                            log.resolve(id).resolve(kind).resolve(date));
                    copy(model.resolve(kind + "/2020-01-01/0001.json"), to.resolve("0001.json"), date);
                }
            }
        }
        run("athlete", "--log", log, "--athlete", "model", "--delete", "--yes");
    }

    private static void copy(Path from, Path to, String date) throws IOException {
        Files.writeString(to, Files.readString(from).replace("2020-01-01", date));
    }

    private static void run(Object... command) {
        Ran ran = Ran.command(command);
        assertThat(ran.status()).as(ran.err()).isZero();
    }
}

package evenfall.report.command;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * A program of its own that writes to a log without end, one command after another, until it is killed. Each command that
 * said it was done is printed as a line: what was done and a mark to find it by.
 */
final class LogWorker {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private LogWorker() {}

    /** Arguments: the log, a recording, a folder for exports, a name for marks, the seed, the first day's number. */
    public static void main(String[] args) {
        PrintStream told = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        SplittableRandom random = new SplittableRandom(Long.parseLong(args[4]));
        int day = Integer.parseInt(args[5]);
        for (int i = 0; ; i++) {
            String mark = args[3] + "-" + i;
            String work =
                    work(random, Path.of(args[2]), mark, FIRST.plusDays(day + i).toString(), args[1]);
            String[] words =
                    work.replace("LOG", "--log\t" + args[0] + "\t--athlete\ta").split("\t");
            PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            int status = Main.run(words, nowhere, new PrintStream(said, true, StandardCharsets.UTF_8));
            told.println(status + " " + words[0] + " " + mark + " " + FIRST.plusDays(day + i)
                    + (status == 0 ? "" : " " + said.toString(StandardCharsets.UTF_8)));
        }
    }

    private static String work(SplittableRandom random, Path exports, String mark, String date, String recording) {
        return switch (random.nextInt(7)) {
            case 0, 1 -> "import\tLOG\t--date\t" + date + "\t--pelvis\t" + recording;
            case 2 -> "note\tLOG\t--date\t2026-01-01\t--landing\t1\t--remark\t" + mark;
            case 3 ->
                String.format(Locale.ROOT, "diary\tLOG\t--date\t2026-01-0%d\t--note\t%s", 1 + random.nextInt(9), mark);
            case 4 -> "athlete\tLOG\t--name\t" + mark;
            case 5 -> "session\tLOG";
            default -> "export\tLOG\t--out\t" + exports.resolve(mark + ".zip");
        };
    }
}

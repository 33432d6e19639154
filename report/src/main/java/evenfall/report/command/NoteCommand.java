package evenfall.report.command;

import evenfall.fusion.landing.Side;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LandingNote;
import evenfall.report.log.NoteEntry;
import evenfall.report.log.NotesTable;
import evenfall.report.log.Now;
import evenfall.report.log.RangeNote;
import evenfall.report.log.SessionDate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes what the coach knows of landings. */
@Command(
        name = "note",
        description = "Notes what the coach knows of landings, before or after they are imported.",
        footer = {"", "A later note is laid over an earlier one; an empty text takes the earlier back."})
final class NoteCommand implements Task {

    private static final Pattern RANGE = Pattern.compile("([1-9]\\d{0,4})(?:-([1-9]\\d{0,4}))?");

    private final Console console;

    @Mixin
    private LogOptions log;

    @Option(
            names = "--date",
            required = true,
            paramLabel = "YYYY-MM-DD[-N]",
            converter = DateOption.OfSession.class,
            description = "The session.")
    private SessionDate date;

    @Option(names = "--landing", paramLabel = "N[-M]", description = "The landing's number in the session, or a range.")
    private @Nullable String landing;

    @Option(
            names = "--notes",
            paramLabel = "FILE",
            description = "Instead of one landing, a table landing,side,height_m,surface,shoes,leave_out,remark.")
    private @Nullable Path table;

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            converter = SideOption.class,
            description = "left, right or both: the foot or feet landed on.")
    private @Nullable Side side;

    @Option(names = "--height", paramLabel = "M", description = "Drop height, m.")
    private @Nullable Double height;

    @Option(names = "--surface", paramLabel = "TEXT", description = "What was landed on.")
    private @Nullable String surface;

    @Option(names = "--shoes", paramLabel = "TEXT", description = "What was worn.")
    private @Nullable String shoes;

    @Option(
            names = "--leave-out",
            paramLabel = "WHY",
            description = "Why the landing counts nowhere; 'no' lets it count again.")
    private @Nullable String leaveOut;

    @Option(names = "--remark", paramLabel = "TEXT", description = "Anything else.")
    private @Nullable String remark;

    NoteCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException {
        LandingNote note = new LandingNote(side, height, surface, shoes, leaveOut, remark);
        if (table != null) {
            if (landing != null || !note.equals(LandingNote.NONE)) {
                throw new UsageException("--notes stands alone with --log, --athlete and --date.");
            }
            return add(String.valueOf(table), NotesTable.read(table.toString(), TextFile.read(table)));
        }
        if (landing == null) {
            throw new UsageException("Say which landing is meant: add --landing N or N-M, or --notes FILE.");
        }
        if (note.equals(LandingNote.NONE)) {
            throw new UsageException("Nothing to note: give at least one of --side, --height, --surface, --shoes,"
                    + " --leave-out and --remark.");
        }
        if (height != null && !(height >= 0 && height <= NotesTable.HIGHEST_M)) {
            throw new UsageException(
                    "--height " + height + " is no drop height; give metres from 0 to 10, such as 0.6.");
        }
        return add("command", List.of(range(landing, note)));
    }

    private int add(String source, List<RangeNote> ranges) throws IOException {
        if (ranges.isEmpty()) {
            throw new UsageException(source + " has no row below its header; nothing was noted.");
        }
        AthleteFolder athlete = log.open();
        NoteEntry entry = new NoteEntry(Now.text(), source, ranges);
        athlete.locked(console::say, () -> athlete.notes(date).add(entry));
        return CommandRunner.DONE;
    }

    private static RangeNote range(String landing, LandingNote note) {
        Matcher matcher = RANGE.matcher(landing);
        if (matcher.matches()) {
            int first = Integer.parseInt(matcher.group(1));
            int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
            if (last >= first) {
                return new RangeNote(first, last, note);
            }
        }
        throw new UsageException(
                "--landing '" + landing + "' is no landing; give a number from 1, or a range such as 3-7.");
    }
}

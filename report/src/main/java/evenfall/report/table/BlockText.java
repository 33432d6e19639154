package evenfall.report.table;

import evenfall.report.block.Block;
import evenfall.report.block.BlockSession;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Trend;
import evenfall.report.csv.PlainNumber;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A block as text for a person at a terminal. */
public final class BlockText {

    private BlockText() {}

    /** Writes the block. */
    public static void write(Block block, Appendable out) throws IOException {
        int landings =
                block.sessions().stream().mapToInt(BlockSession::landings).sum();
        out.append(block.athlete() == null ? "" : block.athlete() + ": ")
                .append(count(block.sessions().size(), "session"))
                .append(", ")
                .append(count(landings, "landing"))
                .append(" that count.\n\n");
        if (!block.sessions().isEmpty()) {
            sessions(block, out);
        }
        measures(block, out);
        if (block.formHeight().why() != null) {
            out.append("Form height: ").append(block.formHeight().why()).append('\n');
        }
        out.append(SessionText.CAUTION).append('\n');
    }

    private static void sessions(Block block, Appendable out) throws IOException {
        TextGrid grid = new TextGrid();
        grid.row("session", "landings", "left foot", "right foot", "both feet", "effort x minutes");
        for (BlockSession session : block.sessions()) {
            grid.row(
                    session.date().toString(),
                    Integer.toString(session.landings()),
                    Integer.toString(session.left()),
                    Integer.toString(session.right()),
                    Integer.toString(session.both()),
                    session.effortMinutes() == null ? Cells.MISSING : PlainNumber.of(session.effortMinutes()));
        }
        grid.write(out);
        out.append('\n');
    }

    private static void measures(Block block, Appendable out) throws IOException {
        if (block.measures().isEmpty()) {
            return;
        }
        TextGrid grid = new TextGrid();
        grid.row("measure", "unit", "first median", "last median", "a week", "trend");
        for (Map.Entry<String, MeasureCourse> measure : block.measures().entrySet()) {
            MeasureCourse course = measure.getValue();
            SessionMedian first = course.sessions().get(0);
            SessionMedian last = course.sessions().get(course.sessions().size() - 1);
            Trend trend = course.trend();
            String verdict = trend.verdict() == null ? String.valueOf(trend.why()) : trend.verdict();
            grid.row(
                    measure.getKey(),
                    course.unit(),
                    number(first.median()),
                    number(last.median()),
                    number(trend.perWeek()),
                    verdict);
        }
        grid.write(out);
        out.append('\n');
    }

    private static String count(int n, String what) {
        return n == 1 ? "1 " + what : n + " " + what + "s";
    }

    private static String number(@Nullable Double value) {
        return value == null ? Cells.MISSING : String.format(Locale.ROOT, "%.3g", value);
    }
}

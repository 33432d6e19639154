package evenfall.report.table;

import evenfall.report.block.Block;
import evenfall.report.block.BlockSession;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Trend;
import evenfall.report.csv.PlainNumber;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

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
        grid.row("measure", "first median", "last median", "a week", "trend");
        Set<String> reasons = new LinkedHashSet<>();
        for (Map.Entry<String, MeasureCourse> measure : block.measures().entrySet()) {
            MeasureCourse course = measure.getValue();
            SessionMedian first = course.sessions().get(0);
            SessionMedian last = course.sessions().get(course.sessions().size() - 1);
            Trend trend = course.trend();
            String name = measure.getKey();
            if (trend.verdict() == null && trend.why() != null) {
                reasons.add(trend.why());
            }
            grid.row(
                    MeasureWords.label(name),
                    MeasureWords.value(name, course.unit(), first.median()),
                    MeasureWords.value(name, course.unit(), last.median()),
                    MeasureWords.aWeek(name, course.unit(), trend.perWeek()),
                    MeasureWords.verdict(name, trend.verdict()));
        }
        grid.write(out);
        for (String reason : reasons) {
            out.append(MeasureWords.notJudged(reason)).append('\n');
        }
        out.append('\n');
    }

    private static String count(int n, String what) {
        return n == 1 ? "1 " + what : n + " " + what + "s";
    }
}

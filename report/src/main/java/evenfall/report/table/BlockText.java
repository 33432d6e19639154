package evenfall.report.table;

import evenfall.report.block.Block;
import evenfall.report.block.BlockSession;
import evenfall.report.block.BothFeet;
import evenfall.report.block.Chances;
import evenfall.report.block.FormHeight;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Sides;
import evenfall.report.block.Trend;
import evenfall.report.csv.PlainNumber;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;

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
        out.append(formHeight(block.formHeight())).append('\n');
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
        grid.row("measure", "first median", "last median", "a week", "trend", "left and right foot", "both feet");
        for (Map.Entry<String, MeasureCourse> measure : block.measures().entrySet()) {
            MeasureCourse course = measure.getValue();
            SessionMedian first = course.sessions().get(0);
            SessionMedian last = course.sessions().get(course.sessions().size() - 1);
            Trend trend = course.trend();
            String name = measure.getKey();
            grid.row(
                    MeasureWords.label(name),
                    MeasureWords.value(name, course.unit(), first.median()),
                    MeasureWords.value(name, course.unit(), last.median()),
                    MeasureWords.aWeek(name, course.unit(), trend.perWeek()),
                    MeasureWords.verdict(
                            name, standing(trend.verdict(), course.chances().trend(), Trend.NO_CLEAR_CHANGE)),
                    standing(course.sides().verdict(), course.chances().sides(), Sides.NO_CLEAR_DIFFERENCE),
                    bothFeet(course));
        }
        grid.write(out);
        out.append(
                "Each day counts as one; heights and feet are held equal where they are noted. Of all called a change or a"
                        + " difference here, at most one in twenty is expected to be chance.\n\n");
    }

    /** A verdict, unless among so many looked at it may well be chance. */
    private static String standing(String verdict, double chance, String otherwise) {
        return verdict.equals(Trend.TOO_FEW) || Chances.stands(chance) ? verdict : otherwise;
    }

    private static String bothFeet(MeasureCourse course) {
        BothFeet both = course.bothFeet();
        return both == null
                ? Cells.MISSING
                : standing(both.verdict(), course.chances().bothFeet(), BothFeet.EVEN);
    }

    private static String formHeight(FormHeight height) {
        if (height.heightM() == null) {
            return "Form height: " + height.why();
        }
        return String.format(
                Locale.ROOT,
                "Form was held half of the time at %.2f m (95 %%: %.2f to %.2f m), of %d landings: what was, not a permission.",
                height.heightM(),
                height.low(),
                height.high(),
                height.n());
    }

    private static String count(int n, String what) {
        return n == 1 ? "1 " + what : n + " " + what + "s";
    }
}

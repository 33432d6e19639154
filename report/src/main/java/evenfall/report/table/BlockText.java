package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockSession;
import evenfall.report.block.BothFeet;
import evenfall.report.block.Chances;
import evenfall.report.block.FormHeight;
import evenfall.report.block.FormHeightTrend;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionFormHeight;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Sides;
import evenfall.report.block.StrapPlace;
import evenfall.report.block.Trend;
import evenfall.report.csv.PlainNumber;
import evenfall.report.deciding.Outlook;
import evenfall.report.form.StandardWords;
import evenfall.report.statistics.Interval;
import evenfall.report.words.Figures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A block as text for a person at a terminal. */
public final class BlockText {

    private static final Words WORDS = Words.beside(BlockText.class);

    private BlockText() {}

    /** Writes a block that is in no log. */
    public static void write(Block block, Appendable out) throws IOException {
        write(block, null, out);
    }

    /**
     * Writes the block.
     *
     * @param outlook what stands beside the measures of a block of the log, or null for a table
     */
    public static void write(Block block, @Nullable Outlook outlook, Appendable out) throws IOException {
        if (outlook != null) {
            OutlookText.first(outlook.standing(), out);
        }
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
        straps(block, out);
        out.append(formHeight(block.formHeight())).append('\n');
        out.append(heightTrend(block.formHeightTrend())).append('\n');
        sessionHeights(block, out);
        if (block.standard() != null) {
            for (String limit : StandardWords.of(block.standard())) {
                out.append(limit).append('\n');
            }
        }
        if (outlook != null) {
            out.append('\n');
            OutlookText.block(outlook, out);
        }
        out.append(SessionText.CAUTION).append('\n');
    }

    private static void sessions(Block block, Appendable out) throws IOException {
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("block.sessions.date"),
                WORDS.say("block.sessions.landings"),
                WORDS.say("block.sessions.left"),
                WORDS.say("block.sessions.right"),
                WORDS.say("block.sessions.both"),
                WORDS.say("block.sessions.effort"));
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
        grid.row(
                WORDS.say("block.column.measure"),
                WORDS.say("block.column.first"),
                WORDS.say("block.column.last"),
                WORDS.say("block.column.week"),
                WORDS.say("block.column.trend"),
                WORDS.say("block.column.sides"),
                WORDS.say("block.column.both"),
                WORDS.say("block.column.within"));
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
                    bothFeet(course),
                    tiring(name, course));
        }
        grid.write(out);
        out.append(WORDS.say("block.chance") + "\n\n");
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

    private static String tiring(String name, MeasureCourse course) {
        String verdict = standing(course.tiring().verdict(), course.chances().tiring(), Trend.NO_CLEAR_CHANGE);
        Double size = course.tiring().overSession();
        Integer landings = course.tiring().landings();
        String words = MeasureWords.verdict(name, verdict);
        return size == null || landings == null || verdict.equals(Trend.NO_CLEAR_CHANGE)
                ? words
                : WORDS.say("tiring", words, MeasureWords.size(course.unit(), size), landings);
    }

    private static void straps(Block block, Appendable out) throws IOException {
        for (BlockSession session : block.sessions()) {
            for (StrapPlace strap : session.straps()) {
                out.append(WORDS.say(
                                "strap.elsewhere",
                                session.date().toString(),
                                strap.place().words(),
                                Math.round(strap.offDeg()),
                                Math.round(strap.usualDeg())))
                        .append('\n');
            }
        }
    }

    private static String heightTrend(FormHeightTrend trend) {
        Double perWeek = trend.perWeekM();
        Interval interval = trend.interval();
        if (perWeek == null || interval == null) {
            return WORDS.say("height.trend.none", trend.why() == null ? "" : trend.why());
        }
        String verdict = standing(trend.verdict(), trend.chanceAmongAll(), Trend.NO_CLEAR_CHANGE);
        return WORDS.say(
                "height.trend",
                verdict,
                Figures.fixed(100 * perWeek, 1),
                Figures.fixed(100 * interval.low(), 1),
                Figures.fixed(100 * interval.high(), 1));
    }

    private static void sessionHeights(Block block, Appendable out) throws IOException {
        List<String> known = new ArrayList<>();
        for (SessionFormHeight session : SessionFormHeight.of(block)) {
            Double height = session.height().heightM();
            if (height != null) {
                known.add(WORDS.say("height.session", session.date().toString(), Cells.metres(height)));
            }
        }
        if (!known.isEmpty()) {
            out.append(WORDS.say("height.sessions", String.join(", ", known))).append('\n');
        }
    }

    private static String formHeight(FormHeight height) {
        if (height.heightM() == null) {
            return WORDS.say("block.height.none", String.valueOf(height.why()));
        }
        return WORDS.say(
                "block.height",
                Figures.fixed(height.heightM(), 2),
                Figures.fixed(height.low(), 2),
                Figures.fixed(height.high(), 2),
                String.valueOf(height.n()));
    }

    private static String count(int n, String what) {
        return n == 1 ? "1 " + what : n + " " + what + "s";
    }
}

package evenfall.report.json;

import evenfall.report.block.Block;
import evenfall.report.block.BlockSession;
import evenfall.report.block.BothFeet;
import evenfall.report.block.FormHeight;
import evenfall.report.block.FormHeightTrend;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.Needed;
import evenfall.report.block.SessionFormHeight;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Sides;
import evenfall.report.block.StrapPlace;
import evenfall.report.block.Tiring;
import evenfall.report.block.Trend;
import evenfall.report.deciding.Outlook;
import evenfall.report.form.FormStandard;
import evenfall.report.session.ProgramVersion;
import evenfall.report.statistics.Interval;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a block as a document. */
public final class BlockDocument {

    private BlockDocument() {}

    /** The document of a block that is in no log, indented. */
    public static String of(Block block) {
        return of(block, null, List.of());
    }

    /**
     * The whole document, indented.
     *
     * @param outlook what stands beside the measures of a block of the log, or null for a table
     * @param needed what differences that somebody stated would need
     */
    public static String of(Block block, @Nullable Outlook outlook, List<Needed> needed) {
        ObjectNode root = JsonTree.object();
        root.put("program", ProgramVersion.PROGRAM);
        root.put("version", ProgramVersion.version());
        JsonText.put(root, "athlete", block.athlete());
        if (outlook != null) {
            StandingNode.write(root.putObject("heed"), outlook.standing());
        }
        ArrayNode sessions = root.putArray("sessions");
        for (BlockSession session : block.sessions()) {
            ObjectNode node = sessions.addObject();
            node.put("date", session.date().toString());
            node.put("landings", session.landings());
            node.put("left", session.left());
            node.put("right", session.right());
            node.put("both", session.both());
            node.put("footSuggested", session.suggested());
            ArrayNode straps = node.putArray("straps");
            for (StrapPlace strap : session.straps()) {
                ObjectNode place = straps.addObject();
                place.put("sensor", strap.place().code());
                JsonText.put(place, "offDeg", strap.offDeg());
                JsonText.put(place, "usualDeg", strap.usualDeg());
            }
            JsonText.put(node, "effortMinutes", session.effortMinutes());
        }
        ObjectNode measures = root.putObject("measures");
        block.measures().forEach((name, course) -> course(measures.putObject(name), course));
        ScienceNode.heights(root, block);
        ScienceNode.needed(root, needed);
        ObjectNode height = root.putObject("formHeight");
        formHeight(height, block.formHeight());
        formHeightTrend(height.putObject("trend"), block.formHeightTrend());
        ArrayNode heights = height.putArray("sessions");
        for (SessionFormHeight session : SessionFormHeight.of(block)) {
            ObjectNode node = heights.addObject();
            node.put("date", session.date().toString());
            formHeight(node, session.height());
        }
        FormStandard standard = block.standard();
        if (standard != null) {
            LimitNode.write(root.putArray("limits"), standard);
        }
        if (outlook == null) {
            root.putNull("nextSession");
        } else {
            OutlookNode.weeks(root, outlook.weeks());
            OutlookNode.nextSession(root.putObject("nextSession"), outlook.next());
        }
        return JsonText.pretty(root);
    }

    private static void course(ObjectNode node, MeasureCourse course) {
        node.put("unit", course.unit());
        ArrayNode sessions = node.putArray("sessions");
        for (SessionMedian session : course.sessions()) {
            ObjectNode each = sessions.addObject();
            each.put("date", session.date().toString());
            each.put("n", session.n());
            JsonText.put(each, "median", session.median());
            JsonText.put(each, "low", session.low());
            JsonText.put(each, "high", session.high());
            each.put("atLeast", session.atLeast());
        }
        JsonText.put(node, "typicalError", course.typicalError());
        JsonText.put(node, "mdc95", course.mdc95());
        trend(node.putObject("trend"), course.trend());
        sides(node.putObject("sides"), course.sides());
        BothFeet bothFeet = course.bothFeet();
        if (bothFeet == null) {
            node.putNull("bothFeet");
        } else {
            ObjectNode both = node.putObject("bothFeet");
            both.put("n", bothFeet.n());
            JsonText.put(both, "median", bothFeet.median());
            interval(both, bothFeet.interval());
            JsonText.put(both, "verdict", bothFeet.verdict());
            JsonText.put(both, "why", bothFeet.why());
        }
        tiring(node.putObject("tiring"), course.tiring());
        ObjectNode chances = node.putObject("chanceAmongAll");
        chances.put("trend", course.chances().trend());
        chances.put("sides", course.chances().sides());
        chances.put("bothFeet", course.chances().bothFeet());
        chances.put("tiring", course.chances().tiring());
        ScienceNode.measure(node.putObject("science"), course);
    }

    private static void tiring(ObjectNode node, Tiring tiring) {
        JsonText.put(node, "perLanding", tiring.perLanding());
        interval(node, tiring.interval());
        JsonText.put(node, "overSession", tiring.overSession());
        JsonText.put(node, "landings", tiring.landings());
        JsonText.put(node, "verdict", tiring.verdict());
        JsonText.put(node, "why", tiring.why());
    }

    private static void formHeightTrend(ObjectNode node, FormHeightTrend trend) {
        JsonText.put(node, "perWeekM", trend.perWeekM());
        interval(node, trend.interval());
        JsonText.put(node, "verdict", trend.verdict());
        JsonText.put(node, "chanceAmongAll", trend.chanceAmongAll());
        JsonText.put(node, "why", trend.why());
    }

    private static void trend(ObjectNode node, Trend trend) {
        JsonText.put(node, "perWeek", trend.perWeek());
        JsonText.put(node, "low", trend.low());
        JsonText.put(node, "high", trend.high());
        JsonText.put(node, "verdict", trend.verdict());
        JsonText.put(node, "method", trend.method());
        JsonText.put(node, "why", trend.why());
    }

    private static void sides(ObjectNode node, Sides sides) {
        side(node.putObject("left"), sides.left());
        side(node.putObject("right"), sides.right());
        JsonText.put(node, "difference", sides.difference());
        interval(node, sides.interval());
        JsonText.put(node, "symmetryIndexPercent", sides.symmetryIndexPercent());
        JsonText.put(node, "verdict", sides.verdict());
        Integer needed = sides.neededPerSide();
        if (needed == null) {
            node.putNull("neededPerSide");
        } else {
            node.put("neededPerSide", needed);
        }
        JsonText.put(node, "method", sides.method());
        JsonText.put(node, "why", sides.why());
    }

    static void interval(ObjectNode node, @Nullable Interval interval) {
        JsonText.put(node, "low", interval == null ? null : Double.valueOf(interval.low()));
        JsonText.put(node, "high", interval == null ? null : Double.valueOf(interval.high()));
    }

    private static void side(ObjectNode node, Sides.OneSide side) {
        node.put("n", side.n());
        JsonText.put(node, "median", side.median());
    }

    private static void formHeight(ObjectNode node, FormHeight height) {
        JsonText.put(node, "heightM", height.heightM());
        JsonText.put(node, "low", height.low());
        JsonText.put(node, "high", height.high());
        node.put("n", height.n());
        JsonText.put(node, "method", height.method());
        JsonText.put(node, "why", height.why());
    }
}

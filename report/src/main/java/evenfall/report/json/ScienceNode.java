package evenfall.report.json;

import evenfall.report.block.Block;
import evenfall.report.block.Evidence;
import evenfall.report.block.HeightAgreement;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.Needed;
import evenfall.report.block.Science;
import evenfall.report.block.WithinDay;
import evenfall.report.csv.PlainNumber;
import evenfall.report.statistics.Agreement;
import evenfall.report.statistics.BootstrapMean;
import evenfall.report.statistics.BrokenStick;
import evenfall.report.statistics.IntraclassCorrelation;
import evenfall.report.statistics.Kendall;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what only a scientist asks of a block. */
final class ScienceNode {

    private ScienceNode() {}

    /** Of one measure. */
    static void measure(ObjectNode node, MeasureCourse course) {
        Evidence evidence = course.evidence();
        Science science = Science.of(course);
        ArrayNode medians = node.putArray("atEqualHeight");
        for (int s = 0; s < evidence.dates().size(); s++) {
            ObjectNode each = medians.addObject();
            each.put("date", evidence.dates().get(s).toString());
            JsonText.put(each, "median", evidence.medians().get(s));
        }
        JsonText.put(node, "typicalErrorPercent", science.typicalErrorPercent());
        withinDay(node, evidence.withinDay());
        kendall(node, science.kendall());
        bend(node, science);
        feet(node, evidence, science.feet());
    }

    private static void withinDay(ObjectNode node, @Nullable WithinDay day) {
        if (day == null) {
            node.putNull("withinDay");
            return;
        }
        ObjectNode each = node.putObject("withinDay");
        correlation(each, "icc", day.alike());
        JsonText.put(each, "landingsADay", day.landingsADay());
        JsonText.put(each, "iccOfDay", day.alike().value() > 0 ? day.alike().ofMean(day.landingsADay()) : 0.0);
        JsonText.put(each, "standardError", day.error());
        JsonText.put(each, "mdc95", day.mdc95());
        JsonText.put(each, "repeatability", day.repeatability());
    }

    private static void kendall(ObjectNode node, @Nullable Kendall kendall) {
        if (kendall == null) {
            node.putNull("kendall");
            return;
        }
        ObjectNode each = node.putObject("kendall");
        each.put("s", kendall.pairs());
        JsonText.put(each, "tau", kendall.tau());
        JsonText.put(each, "chance", kendall.chance());
    }

    private static void bend(ObjectNode node, Science science) {
        BrokenStick bend = science.bend();
        if (bend == null || science.bendDay() == null) {
            node.putNull("bend");
            return;
        }
        ObjectNode each = node.putObject("bend");
        each.put("date", science.bendDay().toString());
        JsonText.put(each, "perWeekBefore", bend.before());
        JsonText.put(each, "perWeekAfter", bend.after());
        JsonText.put(each, "chance", bend.chance());
    }

    private static void feet(ObjectNode node, Evidence evidence, Science.@Nullable Feet feet) {
        Evidence.Feet seen = evidence.feet();
        if (feet == null || seen == null) {
            node.putNull("sides");
            return;
        }
        ObjectNode each = node.putObject("sides");
        ArrayNode differences = each.putArray("leftLessRight");
        seen.leftLessRight().forEach(one -> differences.add(PlainNumber.rounded(one)));
        JsonText.put(each, "scatter", seen.scatter());
        JsonText.put(each, "signFlipChance", feet.signFlipChance());
        JsonText.put(each, "hodgesLehmann", feet.middle());
        BootstrapMean bootstrap = feet.bootstrap();
        JsonText.put(each, "bootstrapError", bootstrap == null ? null : Double.valueOf(bootstrap.error()));
        BlockDocument.interval(each.putObject("bootstrap"), bootstrap == null ? null : bootstrap.percentile());
        BlockDocument.interval(each.putObject("bca"), bootstrap == null ? null : bootstrap.bca());
        JsonText.put(each, "symmetryAnglePercent", feet.symmetryAnglePercent());
    }

    /** How measured heights agree with noted ones. */
    static void heights(ObjectNode root, Block block) {
        HeightAgreement heights = HeightAgreement.of(block);
        if (heights == null) {
            root.putNull("heightAgreement");
            return;
        }
        ObjectNode node = root.putObject("heightAgreement");
        Agreement agreement = heights.agreement();
        node.put("n", agreement.n());
        JsonText.put(node, "meanM", agreement.mean());
        JsonText.put(node, "spreadM", agreement.spread());
        BlockDocument.interval(node, agreement.limits());
        JsonText.put(node, "limitErrorM", agreement.limitError());
        JsonText.put(node, "correlation", agreement.correlation());
        correlation(node, "iccAgreement", heights.absolute());
        correlation(node, "iccConsistency", heights.consistent());
    }

    /** What stated differences would need. */
    static void needed(ObjectNode root, List<Needed> all) {
        ArrayNode array = root.putArray("needed");
        for (Needed needed : all) {
            ObjectNode node = array.addObject();
            node.put("measure", needed.measure());
            JsonText.put(node, "difference", needed.difference());
            count(node, "landingsPerSide", needed.feet());
            count(node, "sessionsWithBothSides", needed.sessions());
            JsonText.put(node, "sessionsPerStretch", needed.stretch());
            JsonText.put(node, "why", needed.why());
        }
    }

    private static void count(ObjectNode node, String name, Needed.@Nullable Count count) {
        if (count == null) {
            node.putNull(name);
            return;
        }
        ObjectNode each = node.putObject(name);
        each.put("have", count.have());
        each.put("need", count.need());
        each.put("more", count.more());
    }

    private static void correlation(ObjectNode node, String name, @Nullable IntraclassCorrelation correlation) {
        if (correlation == null) {
            node.putNull(name);
            return;
        }
        ObjectNode each = node.putObject(name);
        JsonText.put(each, "value", correlation.value());
        BlockDocument.interval(each, correlation.interval());
    }
}

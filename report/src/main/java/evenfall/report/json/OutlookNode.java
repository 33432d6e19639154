package evenfall.report.json;

import evenfall.report.deciding.NextSession;
import evenfall.report.deciding.Option;
import evenfall.report.setting.SettingValue;
import evenfall.report.weeks.CueSpan;
import evenfall.report.weeks.DiaryDay;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.WeekCount;
import evenfall.report.weeks.WeekLoad;
import evenfall.report.weeks.Weeks;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what stands beside the measures of a block: weeks, days, and the next session. */
final class OutlookNode {

    private OutlookNode() {}

    static void nextSession(ObjectNode node, NextSession next) {
        JsonText.put(node, "after", next.after() == null ? null : next.after().toString());
        node.put("argued", next.argued().code());
        ArrayNode options = node.putArray("options");
        for (Option option : next.options()) {
            ObjectNode each = options.addObject();
            each.put("option", option.choice().code());
            each.put("words", option.words());
            JsonText.putAll(each, "for", option.reasonsFor());
            JsonText.putAll(each, "against", option.reasonsAgainst());
        }
        JsonText.put(node, "higherBoxM", next.higherBoxM());
        JsonText.putAll(node, "noHigherBox", next.noHigherBox());
        ArrayNode rules = node.putArray("rules");
        for (SettingValue rule : next.rules()) {
            ObjectNode each = rules.addObject();
            each.put("name", rule.setting().name());
            JsonText.put(each, "value", rule.value());
            each.put("unit", rule.setting().unit());
            each.put("set", rule.isSet());
            each.put("explanation", rule.setting().explanation());
        }
    }

    static void weeks(ObjectNode root, Weeks weeks) {
        ArrayNode all = root.putArray("weeks");
        for (int w = 0; w < weeks.weeks().size(); w++) {
            WeekCount week = weeks.weeks().get(w);
            ObjectNode each = all.addObject();
            each.put("monday", week.monday().toString());
            each.put("sessions", week.sessions());
            each.put("landings", week.landings());
            JsonText.put(each, "effortMinutes", week.effortMinutes());
            JsonText.put(each, "landingsChange", week.landingsChange());
            JsonText.put(each, "effortMinutesChange", week.effortChange());
            load(each.putObject("science"), weeks.loads().get(w));
        }
        ArrayNode heights = root.putArray("heights");
        for (HeightCount height : weeks.heights()) {
            ObjectNode each = heights.addObject();
            JsonText.put(each, "heightM", height.heightM());
            each.put("left", height.left());
            each.put("right", height.right());
            each.put("both", height.both());
            each.put("unknown", height.unknown());
            each.put("held", height.held());
        }
        ArrayNode days = root.putArray("days");
        weeks.days().forEach(day -> day(days.addObject(), day));
        ArrayNode cues = root.putArray("cues");
        for (CueSpan cue : weeks.cues()) {
            ObjectNode each = cues.addObject();
            each.put("cue", cue.cue());
            each.put("from", cue.from().toString());
            each.put("to", cue.to().toString());
            each.put("sessions", cue.sessions());
        }
        JsonText.putAll(root, "questions", weeks.questions());
    }

    private static void load(ObjectNode node, WeekLoad load) {
        JsonText.put(node, "monotony", load.monotony());
        JsonText.put(node, "strain", load.strain());
        JsonText.put(node, "average7", load.average7());
        JsonText.put(node, "average28", load.average28());
    }

    private static void day(ObjectNode node, DiaryDay day) {
        node.put("date", day.date().toString());
        numbers(node.putObject("soreness"), day.soreness());
        numbers(node.putObject("pain"), day.pain());
        JsonText.putAll(node, "signs", day.signs());
        JsonText.put(node, "effortMinutes", day.effortMinutes());
        ObjectNode results = node.putObject("results");
        day.results().forEach(results::put);
        JsonText.put(node, "cue", day.cue());
    }

    private static void numbers(ObjectNode node, Map<String, Integer> regions) {
        regions.forEach((region, size) -> node.put(region, size.intValue()));
    }
}

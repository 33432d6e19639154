package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.deciding.NextSession;
import evenfall.report.deciding.Option;
import evenfall.report.deciding.Outlook;
import evenfall.report.html.view.DayView;
import evenfall.report.setting.SettingValue;
import java.util.ArrayList;
import java.util.List;

/** The next session in plain lines: what the reasons point to, each way on with its reasons; and the rules. */
final class NextSessionLines {

    private static final Words WORDS = Words.beside(NextSessionLines.class);

    private NextSessionLines() {}

    static List<DayView> of(Outlook outlook) {
        NextSession next = outlook.next();
        List<DayView> views = new ArrayList<>();
        views.add(new DayView(
                WORDS.say("next.argued"), List.of(next.arguedOption().words() + ".", WORDS.say("next.uncounted"))));
        for (Option option : next.options()) {
            List<String> lines = new ArrayList<>();
            option.reasonsFor().forEach(reason -> lines.add(WORDS.say("next.for", reason)));
            option.reasonsAgainst().forEach(reason -> lines.add(WORDS.say("next.against", reason)));
            if (!lines.isEmpty()) {
                views.add(new DayView(option.words(), lines));
            }
        }
        if (!next.noHigherBox().isEmpty()) {
            views.add(new DayView(WORDS.say("next.no.box"), next.noHigherBox()));
        }
        for (String question : outlook.weeks().questions()) {
            views.add(new DayView(WORDS.say("next.question"), List.of(question)));
        }
        return views;
    }

    /** The rules by which it argues, a line each. */
    static List<String> rules(Outlook outlook) {
        List<String> rules = new ArrayList<>();
        for (SettingValue rule : outlook.next().rules()) {
            rules.add(WORDS.say(
                    rule.isSet() ? "next.rule.set" : "next.rule",
                    rule.setting().name(),
                    rule.setting().say(rule.value()),
                    rule.setting().explanation()));
        }
        return rules;
    }
}

package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.csv.PlainNumber;
import evenfall.report.deciding.NextSession;
import evenfall.report.deciding.Option;
import evenfall.report.deciding.Outlook;
import evenfall.report.deciding.RuleSettings;
import evenfall.report.heed.Standing;
import evenfall.report.setting.SettingValue;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.WeekCount;
import evenfall.report.weeks.Weeks;
import evenfall.report.words.Figures;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What stands first, week by week, and the next session, as text for a person at a terminal. */
public final class OutlookText {

    private static final Words WORDS = Words.beside(OutlookText.class);

    private OutlookText() {}

    /** Writes what stands first, if anything does. */
    public static void first(List<String> sentences, Appendable out) throws IOException {
        for (String sentence : sentences) {
            out.append("! ").append(sentence).append('\n');
        }
        if (!sentences.isEmpty()) {
            out.append('\n');
        }
    }

    /** Writes what stands first, if anything does. */
    public static void first(Standing standing, Appendable out) throws IOException {
        first(standing.sentences(), out);
    }

    /** Writes what stands beside a block's measures. */
    public static void block(Outlook outlook, Appendable out) throws IOException {
        weeks(outlook.weeks(), out);
        next(outlook.next(), out);
    }

    private static void weeks(Weeks weeks, Appendable out) throws IOException {
        if (weeks.weeks().isEmpty()) {
            return;
        }
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("weeks.from"),
                WORDS.say("weeks.sessions"),
                WORDS.say("weeks.landings"),
                WORDS.say("weeks.change"),
                WORDS.say("weeks.effort"),
                WORDS.say("weeks.change"));
        for (WeekCount week : weeks.weeks()) {
            grid.row(
                    week.monday().toString(),
                    Integer.toString(week.sessions()),
                    Integer.toString(week.landings()),
                    change(
                            week.landingsChange() == null
                                    ? null
                                    : Double.valueOf(week.landingsChange().doubleValue())),
                    week.effortMinutes() == null ? Cells.MISSING : PlainNumber.of(week.effortMinutes()),
                    change(week.effortChange()));
        }
        grid.write(out);
        out.append('\n');
        heights(weeks.heights(), out);
        for (String question : weeks.questions()) {
            out.append("? ").append(question).append('\n');
        }
        if (!weeks.questions().isEmpty()) {
            out.append('\n');
        }
    }

    private static void heights(List<HeightCount> heights, Appendable out) throws IOException {
        if (heights.isEmpty()) {
            return;
        }
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("heights.height"),
                WORDS.say("heights.left"),
                WORDS.say("heights.right"),
                WORDS.say("heights.both"),
                WORDS.say("heights.unknown"),
                WORDS.say("heights.held"));
        for (HeightCount height : heights) {
            grid.row(
                    WORDS.say("unit.m", Figures.height(height.heightM())),
                    Integer.toString(height.left()),
                    Integer.toString(height.right()),
                    Integer.toString(height.both()),
                    Integer.toString(height.unknown()),
                    WORDS.say("heights.of", height.held(), height.all()));
        }
        grid.write(out);
        out.append('\n');
    }

    /** Writes what speaks for and against each way on with the next session. */
    public static void next(NextSession next, Appendable out) throws IOException {
        out.append(
                        next.after() == null
                                ? WORDS.say("next.none")
                                : WORDS.say("next.after", next.after().toString()))
                .append('\n');
        out.append(WORDS.say("next.argued", next.arguedOption().words())).append('\n');
        for (Option option : next.options()) {
            if (option.reasonsFor().isEmpty() && option.reasonsAgainst().isEmpty()) {
                continue;
            }
            boolean argued = option.choice() == next.argued();
            out.append(argued ? "* " : "  ").append(option.words()).append('\n');
            for (String reason : option.reasonsFor()) {
                out.append("    ").append(WORDS.say("next.for", reason)).append('\n');
            }
            for (String reason : option.reasonsAgainst()) {
                out.append("    ").append(WORDS.say("next.against", reason)).append('\n');
            }
        }
        if (!next.noHigherBox().isEmpty()) {
            out.append(WORDS.say("next.no.box", String.join(" ", next.noHigherBox())))
                    .append('\n');
        }
        out.append(WORDS.say(
                        "next.rules",
                        next.rules().stream().map(OutlookText::rule).collect(Collectors.joining(", "))))
                .append('\n');
    }

    private static String rule(SettingValue rule) {
        boolean noCap = rule.setting().name().equals(RuleSettings.CAP) && rule.value() >= RuleSettings.NO_CAP;
        String text = rule.setting().name() + " "
                + (noCap ? WORDS.say("next.no.cap") : rule.setting().say(rule.value()));
        return rule.isSet() ? WORDS.say("next.rule.set", text) : text;
    }

    private static String change(@Nullable Double value) {
        if (value == null) {
            return Cells.MISSING;
        }
        return value > 0 ? WORDS.say("weeks.more", PlainNumber.of(value)) : PlainNumber.of(value);
    }
}

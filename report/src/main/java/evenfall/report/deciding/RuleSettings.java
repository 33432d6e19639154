package evenfall.report.deciding;

import evenfall.ingest.words.Words;
import evenfall.report.setting.Setting;
import evenfall.report.setting.SettingList;
import java.util.List;

/**
 * The coach's own rules. Where a coach starts from: common practice, no source. That open pain or a warning sign ends the drops,
 * and that a clinician's limit stands above everything, is no rule of this list and cannot be set.
 */
public final class RuleSettings {

    /** Stands for no cap: more landings than any session has. */
    public static final int NO_CAP = 1000;

    /** The name of the cap. */
    public static final String CAP = "landings-a-session";

    static final String LOST_IN_A_ROW = "lost-in-a-row";
    static final String HELD_SHARE = "held-share";
    static final String STEP_UP = "step-up";
    static final String SORE = "sore";
    static final String SAME_FAULT = "same-fault";
    static final String CUE_SESSIONS = "cue-sessions";
    static final String FLAT_WEEKS = "flat-weeks";

    private static final Words WORDS = Words.beside(RuleSettings.class);

    /** The file {@code rules.txt}. */
    public static final SettingList LIST = new SettingList(
            "rules.txt",
            WORDS.say("rules.title"),
            List.of(
                    whole(CAP, NO_CAP, 1, NO_CAP),
                    whole(LOST_IN_A_ROW, 2, 1, 10),
                    new Setting(HELD_SHARE, "%", 75, 50, 100, false, WORDS.say("rule." + HELD_SHARE)),
                    new Setting(STEP_UP, "m", 0.10, 0.01, 0.30, false, WORDS.say("rule." + STEP_UP)),
                    whole(SORE, 4, 1, 10),
                    new Setting(SAME_FAULT, "%", 33, 5, 100, false, WORDS.say("rule." + SAME_FAULT)),
                    whole(CUE_SESSIONS, 3, 1, 50),
                    whole(FLAT_WEEKS, 4, 2, 26)));

    private RuleSettings() {}

    private static Setting whole(String name, double starting, double low, double high) {
        return new Setting(name, "", starting, low, high, true, WORDS.say("rule." + name));
    }
}

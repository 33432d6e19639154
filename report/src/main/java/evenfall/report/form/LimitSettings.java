package evenfall.report.form;

import evenfall.ingest.words.Words;
import evenfall.report.setting.Setting;
import evenfall.report.setting.SettingList;
import java.util.List;

/** What a coach may set of the limits of form. Where a coach starts from: common practice, no source. */
public final class LimitSettings {

    private static final Words WORDS = Words.beside(LimitSettings.class);

    /** The file {@code limits.txt}. */
    public static final SettingList LIST = new SettingList(
            "limits.txt",
            WORDS.say("limits.title"),
            List.of(
                    limit("mean-braking", "g", 5.0, 1.5, 20),
                    limit("peak-spreads", "", 2, 1, 10),
                    limit("pelvic-rotation", "deg", 6, 1, 90),
                    limit("pelvic-obliquity", "deg", 5, 1, 90),
                    limit("trunk-lean", "deg", 6, 1, 90),
                    limit("twist", "deg", 8, 1, 90),
                    limit("beside-feet", "m", 0.06, 0.01, 0.5),
                    limit("behind-feet", "m", 0.10, 0.01, 0.5),
                    new Setting("steps-back", "", 0, 0, 10, true, WORDS.say("limit.steps-back")),
                    limit("tilt-back", "deg", 8, 1, 90),
                    limit("spine-flexion", "deg", 20, 1, 120),
                    limit("collapse", "deg/s", 200, 20, 2000),
                    limit("own-spreads", "", 3, 1, 10),
                    limit("own-at-most", "", 1.5, 1, 10),
                    limit("low-height", "m", 0.40, 0.05, 3)));

    private LimitSettings() {}

    private static Setting limit(String name, String unit, double starting, double low, double high) {
        return new Setting(name, unit, starting, low, high, false, WORDS.say("limit." + name));
    }
}

package evenfall.report.deciding;

import evenfall.report.heed.Standing;
import evenfall.report.log.SessionDate;
import evenfall.report.setting.SettingValue;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What speaks for and against each way on with the session after the last one. The program argues; the coach decides.
 *
 * @param after the last session, or null where there is none yet
 * @param standing what stands above all of it
 * @param argued the way the reasons point to
 * @param options all ways, in a fixed order
 * @param higherBoxM a height no box of the next session should pass if it is to be higher at all, m; null, more often than not,
 *     where no higher box is named
 * @param noHigherBox why no higher box is named; empty where one is
 * @param rules the coach's rules as they hold
 */
public record NextSession(
        @Nullable SessionDate after,
        Standing standing,
        Choice argued,
        List<Option> options,
        @Nullable Double higherBoxM,
        List<String> noHigherBox,
        List<SettingValue> rules) {

    public NextSession {
        options = List.copyOf(options);
        noHigherBox = List.copyOf(noHigherBox);
        rules = List.copyOf(rules);
        if (higherBoxM != null && (standing.stops() || standing.clinicianLimit() != null || standing.unreadable())) {
            throw new IllegalArgumentException("no higher box may be named while something stands above it");
        }
    }

    /** The option the reasons point to. */
    public Option arguedOption() {
        return options.stream()
                .filter(option -> option.choice() == argued)
                .findFirst()
                .orElseThrow();
    }
}

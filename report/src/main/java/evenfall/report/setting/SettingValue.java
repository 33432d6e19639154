package evenfall.report.setting;

import org.jspecify.annotations.Nullable;

/**
 * A figure that holds, and where it came from.
 *
 * @param setting what it is
 * @param value in the setting's unit
 * @param from the file and line that set it, or null where nobody did and it is what a coach starts from
 */
public record SettingValue(
        Setting setting, double value, @Nullable String from) {

    /** Whether somebody set it. */
    public boolean isSet() {
        return from != null;
    }
}

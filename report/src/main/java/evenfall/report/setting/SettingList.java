package evenfall.report.setting;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The figures one file may set.
 *
 * @param file the file's name, such as {@code limits.txt}
 * @param title a sentence on what they are for
 * @param settings all of them, in the order the file lists them
 */
public record SettingList(String file, String title, List<Setting> settings) {

    public SettingList {
        settings = List.copyOf(settings);
        if (settings.stream().map(Setting::name).distinct().count() != settings.size()) {
            throw new IllegalArgumentException(file + " names a setting twice");
        }
    }

    /** The setting of that name, in any case. */
    public Optional<Setting> named(String name) {
        return settings.stream()
                .filter(setting -> setting.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** All names, for a sentence. */
    String names() {
        return settings.stream().map(Setting::name).collect(Collectors.joining(", "));
    }
}

package evenfall.report.setting;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The figures of one list that hold: what files set, and what a coach starts from for the rest. */
public final class Settings {

    private final Map<String, SettingValue> values;

    private Settings(Map<String, SettingValue> values) {
        this.values = values;
    }

    /** What holds where nobody set anything. */
    public static Settings starting(SettingList list) {
        Map<String, SettingValue> values = new LinkedHashMap<>();
        list.settings()
                .forEach(setting -> values.put(setting.name(), new SettingValue(setting, setting.starting(), null)));
        return new Settings(values);
    }

    /** These with what a nearer file sets laid over them, name by name. */
    public Settings with(Collection<SettingValue> nearer) {
        Map<String, SettingValue> laid = new LinkedHashMap<>(values);
        for (SettingValue value : nearer) {
            if (laid.replace(value.setting().name(), value) == null) {
                throw new IllegalArgumentException(value.setting().name() + " is not of this list");
            }
        }
        return new Settings(laid);
    }

    /** The figure of that name, with where it came from. */
    public SettingValue of(String name) {
        SettingValue value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("there is no setting " + name);
        }
        return value;
    }

    /** The figure of that name, in its unit. */
    public double value(String name) {
        return of(name).value();
    }

    /** All of them, in the order of the list. */
    public List<SettingValue> all() {
        return List.copyOf(values.values());
    }
}

package evenfall.report.weeks;

import evenfall.report.log.DiaryEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One day of a diary put together from its entries, as the person felt it worst.
 *
 * @param date the day
 * @param soreness region to the largest number of the day
 * @param pain region to the largest number of the day
 * @param signs warning signs
 * @param effortMinutes effort times minutes, summed; null without any
 * @param results name to value with unit, the last one
 * @param cue the last cue or drill named, or null
 */
public record DiaryDay(
        LocalDate date,
        Map<String, Integer> soreness,
        Map<String, Integer> pain,
        List<String> signs,
        @Nullable Double effortMinutes,
        Map<String, String> results,
        @Nullable String cue) {

    public DiaryDay {
        soreness = Collections.unmodifiableMap(new LinkedHashMap<>(soreness));
        pain = Collections.unmodifiableMap(new LinkedHashMap<>(pain));
        signs = List.copyOf(signs);
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
    }

    /** Puts a day together. */
    static DiaryDay of(LocalDate date, List<DiaryEntry> entries) {
        Map<String, Integer> soreness = new LinkedHashMap<>();
        Map<String, Integer> pain = new LinkedHashMap<>();
        List<String> signs = new ArrayList<>();
        Map<String, String> results = new LinkedHashMap<>();
        Double effort = null;
        String cue = null;
        for (DiaryEntry entry : entries) {
            entry.soreness().forEach((region, size) -> soreness.merge(region, size, Math::max));
            entry.pain().forEach((region, size) -> pain.merge(region, size, Math::max));
            entry.signs().stream()
                    .filter(sign -> !sign.equals(DiaryEntry.NO_SIGN) && !signs.contains(sign))
                    .forEach(signs::add);
            results.putAll(entry.results());
            if (entry.effort() != null && entry.minutes() != null) {
                effort = (effort == null ? 0 : effort) + entry.effort() * entry.minutes();
            }
            cue = entry.cue() == null ? cue : entry.cue();
        }
        return new DiaryDay(date, soreness, pain, signs, effort, results, cue);
    }

    /** The largest soreness of the day; null where none was asked for. */
    public @Nullable Integer sorest() {
        return soreness.values().stream().max(Integer::compare).orElse(null);
    }
}

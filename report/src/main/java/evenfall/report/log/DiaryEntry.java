package evenfall.report.log;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One entry of an athlete's diary.
 *
 * @param writtenAt when it was written, ISO 8601 with offset
 * @param soreness region to 0..10
 * @param pain region to 0..10
 * @param signs warning signs: swelling, giving-way, locking, numbness, head-impact
 * @param effort 0..10 asked half an hour after, or null
 * @param minutes length of the session, or null
 * @param results countable results, name to value with unit, such as {@code 12 reps}
 * @param cue the cue or drill in force, or null
 * @param note anything else, or null
 */
public record DiaryEntry(
        String writtenAt,
        Map<String, Integer> soreness,
        Map<String, Integer> pain,
        List<String> signs,
        @Nullable Double effort,
        @Nullable Double minutes,
        Map<String, String> results,
        @Nullable String cue,
        @Nullable String note) {

    /** The warning signs there are. */
    public static final List<String> SIGNS = List.of("swelling", "giving-way", "locking", "numbness", "head-impact");

    public DiaryEntry {
        soreness = inOrder(soreness);
        pain = inOrder(pain);
        signs = List.copyOf(signs);
        results = inOrder(results);
    }

    /** Whether it ends the drops of its day: any pain, or a warning sign. */
    public boolean stopsDrops() {
        return !signs.isEmpty() || pain.values().stream().anyMatch(number -> number > 0);
    }

    private static <V> Map<String, V> inOrder(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}

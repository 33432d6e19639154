package evenfall.report.log;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
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
 * @param corrects number of the entry of the same day that this one stands instead of, or null; both are kept
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
        @Nullable String note,
        @Nullable Integer corrects) {

    private static final int WORST = 10;

    /** The warning signs there are. */
    public static final List<String> SIGNS = List.of("swelling", "giving-way", "locking", "numbness", "head-impact");

    /** Stands among the signs of an entry that says that none of those noted before is there any more. */
    public static final String NO_SIGN = "none";

    public DiaryEntry {
        soreness = inOrder(soreness);
        pain = inOrder(pain);
        signs = List.copyOf(signs);
        results = inOrder(results);
        requireSizes(soreness);
        requireSizes(pain);
        if (effort != null && !(effort >= 0 && effort <= WORST)) {
            throw new IllegalArgumentException("effort " + effort + " is not from 0 to 10");
        }
    }

    /** An entry that corrects none. */
    public DiaryEntry(
            String writtenAt,
            Map<String, Integer> soreness,
            Map<String, Integer> pain,
            List<String> signs,
            @Nullable Double effort,
            @Nullable Double minutes,
            Map<String, String> results,
            @Nullable String cue,
            @Nullable String note) {
        this(writtenAt, soreness, pain, signs, effort, minutes, results, cue, note, null);
    }

    /** The numbers of a day's entries that a later one stands instead of. */
    public static Set<Integer> corrected(SortedMap<Integer, DiaryEntry> numbered) {
        Set<Integer> corrected = new HashSet<>();
        numbered.forEach((number, entry) -> {
            if (entry.corrects() != null && entry.corrects() < number) {
                corrected.add(entry.corrects());
            }
        });
        return corrected;
    }

    /** What holds of a day's entries: those that no later one corrects, in order. */
    public static List<DiaryEntry> inForce(SortedMap<Integer, DiaryEntry> numbered) {
        Set<Integer> corrected = corrected(numbered);
        List<DiaryEntry> holding = new ArrayList<>();
        numbered.forEach((number, entry) -> {
            if (!corrected.contains(number)) {
                holding.add(entry);
            }
        });
        return List.copyOf(holding);
    }

    private static void requireSizes(Map<String, Integer> regions) {
        regions.forEach((region, size) -> {
            if (size == null || size < 0 || size > WORST) {
                throw new IllegalArgumentException(region + " " + size + " is not from 0 to 10");
            }
        });
    }

    /** Whether it ends the drops of its day: any pain, or a warning sign. */
    public boolean stopsDrops() {
        return signs.stream().anyMatch(sign -> !sign.equals(NO_SIGN))
                || !hurting().isEmpty();
    }

    /** The places that hurt with how much, from 1 on, in order of their names. */
    public Map<String, Integer> hurting() {
        Map<String, Integer> hurting = new TreeMap<>(pain);
        hurting.values().removeIf(size -> size == 0);
        return hurting;
    }

    private static <V> Map<String, V> inOrder(Map<String, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}

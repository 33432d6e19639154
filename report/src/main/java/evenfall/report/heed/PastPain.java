package evenfall.report.heed;

import evenfall.report.log.DiaryEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The last day something hurt, whether or not it is over.
 *
 * @param day the day
 * @param regions where, as it was entered
 */
public record PastPain(LocalDate day, List<String> regions) {

    public PastPain {
        regions = List.copyOf(regions);
    }

    /** The last day before {@code day} on which pain was entered; null if there is none. */
    public static @Nullable PastPain before(LocalDate day, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        PastPain last = null;
        for (var entries : diary.headMap(day).entrySet()) {
            TreeSet<String> regions = new TreeSet<>();
            entries.getValue().forEach(entry -> regions.addAll(entry.hurting().keySet()));
            if (!regions.isEmpty()) {
                last = new PastPain(entries.getKey(), List.copyOf(regions));
            }
        }
        return last;
    }
}

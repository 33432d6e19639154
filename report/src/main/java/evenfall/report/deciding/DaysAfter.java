package evenfall.report.deciding;

import evenfall.report.log.DiaryEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/** What the diary says of a session's day and of the days after it. */
final class DaysAfter {

    private static final int DAYS = 3;

    private boolean asked;
    private boolean nextDayAsked;
    private boolean painAsked;
    private boolean hurt;
    private int sorest;
    private String sorestRegion = "";

    private DaysAfter() {}

    static DaysAfter of(LocalDate session, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        DaysAfter after = new DaysAfter();
        diary.tailMap(session).forEach((day, entries) -> {
            boolean late = day.isAfter(session) && !day.isAfter(session.plusDays(DAYS));
            for (DiaryEntry entry : entries) {
                after.pain(entry);
                if (late && !entry.soreness().isEmpty()) {
                    after.asked = true;
                    after.nextDayAsked |= day.equals(session.plusDays(1));
                    after.soreness(entry.soreness());
                }
            }
        });
        return after;
    }

    /** Whether soreness was asked for on one of the three days after. */
    boolean asked() {
        return asked;
    }

    /** Whether it was asked for on the very next day. */
    boolean nextDayAsked() {
        return nextDayAsked;
    }

    /** Whether anybody asked for pain on the session's day or since. */
    boolean painAsked() {
        return painAsked;
    }

    /** Whether pain or a warning sign was noted on the session's day or since, open or not. */
    boolean hurt() {
        return hurt;
    }

    /** The largest soreness of the three days after, 0 where none was asked for. */
    int sorest() {
        return sorest;
    }

    /** Where that was. */
    String sorestRegion() {
        return sorestRegion;
    }

    private void pain(DiaryEntry entry) {
        painAsked |= !entry.pain().isEmpty();
        hurt |= entry.stopsDrops();
    }

    private void soreness(Map<String, @Nullable Integer> regions) {
        regions.forEach((region, size) -> {
            if (size != null && size > sorest) {
                sorest = size;
                sorestRegion = region;
            }
        });
    }
}

package evenfall.report.result;

import evenfall.report.heed.Standing;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What holds of an athlete's diary, and what stands first by it and by the clinician; read when first asked for, and once. */
public final class LoggedDiary {

    private final AthleteFolder athlete;
    private final Consumer<String> tell;
    private @Nullable SortedMap<LocalDate, List<DiaryEntry>> days;
    private @Nullable Standing standing;

    /**
     * The diary of an athlete.
     *
     * @param tell told, in a sentence, of each file that had to be passed over
     */
    public LoggedDiary(AthleteFolder athlete, Consumer<String> tell) {
        this.athlete = athlete;
        this.tell = tell;
    }

    /** By day; entries that a later one corrects are left out. */
    public SortedMap<LocalDate, List<DiaryEntry>> days() throws IOException {
        read();
        return days == null ? new TreeMap<>() : days;
    }

    /** What stands first wherever something of the athlete is shown. */
    public Standing standing() throws IOException {
        read();
        return standing == null ? Standing.NONE : standing;
    }

    private void read() throws IOException {
        if (days != null) {
            return;
        }
        List<String> passedOver = new ArrayList<>();
        String limit = athlete.lastWho(passedOver::add)
                .map(AthleteEntry::clinicianLimit)
                .orElse(null);
        SortedMap<LocalDate, List<DiaryEntry>> all = athlete.diary(passedOver::add);
        passedOver.forEach(tell);
        standing = Standing.of(limit, all, !passedOver.isEmpty());
        days = Collections.unmodifiableSortedMap(all);
    }
}

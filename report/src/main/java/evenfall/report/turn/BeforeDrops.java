package evenfall.report.turn;

import evenfall.report.heed.Standing;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Consumer;

/** Says before the first drop what stands first; never blocks. */
public final class BeforeDrops {

    private BeforeDrops() {}

    /**
     * Says it.
     *
     * @param tell told, in a sentence each, what is open, what is limited, and whether drops have ended for today
     */
    public static void tell(AthleteFolder athlete, Consumer<String> tell) throws IOException {
        Standing standing = Standing.of(athlete, tell);
        standing.sentences().forEach(tell);
        if (!standing.stops()) {
            LocalDate today = LocalDate.now(ZoneId.systemDefault());
            SortedMap<LocalDate, List<DiaryEntry>> diary = athlete.diary(sentence -> {});
            Standing.endedOn(today, diary.getOrDefault(today, List.of())).forEach(tell);
        }
    }
}

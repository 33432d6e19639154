package evenfall.report.heed;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.words.Days;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What stands first wherever something of an athlete is shown.
 *
 * @param clinicianLimit what a licensed practitioner forbids, or null
 * @param pain pain that is open, in the order it came
 * @param signs warning signs that are open
 * @param unreadable whether part of the diary, or who the athlete is, cannot be read, so that something may be missing here
 */
public record Standing(@Nullable String clinicianLimit, List<OpenPain> pain, List<OpenSign> signs, boolean unreadable) {

    /** Nothing is known of anybody. */
    public static final Standing NONE = new Standing(null, List.of(), List.of(), false);

    private static final Words WORDS = Words.beside(Standing.class);

    public Standing {
        pain = List.copyOf(pain);
        signs = List.copyOf(signs);
    }

    /** By a limit and what holds of a whole diary. */
    public static Standing of(
            @Nullable String clinicianLimit, SortedMap<LocalDate, List<DiaryEntry>> diary, boolean unreadable) {
        PainFinder finder = PainFinder.through(diary);
        return new Standing(clinicianLimit, finder.pain(), finder.signs(), unreadable);
    }

    /**
     * By what the log holds of an athlete.
     *
     * @param damaged told, in a sentence, of each file that had to be passed over
     */
    public static Standing of(AthleteFolder athlete, Consumer<String> damaged) throws IOException {
        List<String> passedOver = new ArrayList<>();
        Consumer<String> noting = sentence -> {
            passedOver.add(sentence);
            damaged.accept(sentence);
        };
        String limit = athlete.lastWho(noting).map(AthleteEntry::clinicianLimit).orElse(null);
        return of(limit, new TreeMap<>(athlete.diary(noting)), !passedOver.isEmpty());
    }

    /** Whether nobody should drop: pain or a warning sign is open. */
    public boolean stops() {
        return !pain.isEmpty() || !signs.isEmpty();
    }

    /** All of it in sentences, in order of weight; none where there is nothing to heed. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (clinicianLimit != null) {
            sentences.add(WORDS.say("limit", clinicianLimit));
        }
        for (OpenSign sign : signs) {
            sentences.add(WORDS.say("sign", signWords(sign.sign()), Days.words(sign.since())));
        }
        for (OpenPain open : pain) {
            sentences.add(WORDS.say(
                    open.since().equals(open.last()) ? "pain" : "pain.longer",
                    open.region(),
                    Integer.toString(open.size()),
                    Days.words(open.last()),
                    Days.words(open.since())));
        }
        if (unreadable) {
            sentences.add(WORDS.say("unreadable"));
        }
        return List.copyOf(sentences);
    }

    /** Whether anything hurt on a day: pain of any size was noted that day, or had not been noted as 0 by its end. */
    public static boolean hurtOn(LocalDate day, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        return diary.getOrDefault(day, List.of()).stream()
                        .anyMatch(entry -> !entry.hurting().isEmpty())
                || !PainFinder.through(diary.headMap(day.plusDays(1))).pain().isEmpty();
    }

    /** That drops have ended on a day, if its diary says so, whatever was noted since. */
    public static List<String> endedOn(LocalDate day, List<DiaryEntry> ofThatDay) {
        return ofThatDay.stream().anyMatch(DiaryEntry::stopsDrops)
                ? List.of(WORDS.say("ended", Days.words(day)))
                : List.of();
    }

    private static String signWords(String sign) {
        return WORDS.knows("sign." + sign) ? WORDS.say("sign." + sign) : sign;
    }
}

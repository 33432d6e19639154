package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.log.DiaryEntry;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Diary entries in words. Entries are the athlete's own: what they name is repeated, not judged. */
final class DiaryWords {

    private static final Words WORDS = Words.beside(DiaryWords.class);

    private DiaryWords() {}

    /** Everything entered, a sentence each. */
    static List<String> all(List<DiaryEntry> diary) {
        List<String> lines = new ArrayList<>();
        for (DiaryEntry entry : diary) {
            add(lines, "diary.pain", regions(entry.pain()));
            add(lines, "diary.sign", signs(entry));
            add(lines, "diary.soreness", regions(entry.soreness()));
            effort(lines, entry);
            add(lines, "diary.results", results(entry.results()));
            add(lines, "diary.cue", entry.cue() == null ? "" : entry.cue());
            add(lines, "diary.note", entry.note() == null ? "" : entry.note());
        }
        return lines;
    }

    /** What of the diary must be heeded before the next drop. */
    static List<String> cautions(List<DiaryEntry> diary) {
        List<String> lines = new ArrayList<>();
        for (DiaryEntry entry : diary) {
            add(lines, "caution.sign", signs(entry));
        }
        for (DiaryEntry entry : diary) {
            add(lines, "caution.pain", regions(entry.hurting()));
        }
        return lines;
    }

    /** What hurt and which signs there were, with what the athlete noted of it; nothing on a day without. */
    static List<String> hurt(List<DiaryEntry> diary) {
        List<String> lines = new ArrayList<>();
        for (DiaryEntry entry : diary) {
            Map<String, Integer> pain = entry.hurting();
            if (!pain.isEmpty() || !entry.signs().isEmpty()) {
                add(lines, "diary.pain", regions(pain));
                add(lines, "diary.sign", signs(entry));
                add(lines, "diary.note", entry.note() == null ? "" : entry.note());
            }
        }
        return lines;
    }

    /** Whether anything hurt, in a sentence, or that nobody asked. */
    static String pain(List<DiaryEntry> diary) {
        Map<String, Integer> most = new TreeMap<>();
        diary.forEach(entry -> entry.pain().forEach((region, size) -> most.merge(region, size, Math::max)));
        boolean asked = !most.isEmpty();
        most.values().removeIf(size -> size == 0);
        return most.isEmpty() ? WORDS.say(asked ? "pain.none" : "pain.unknown") : WORDS.say("pain.some", regions(most));
    }

    /** What of the last day that has an entry must be heeded before the next drop. */
    static List<String> lastDayCautions(SortedMap<LocalDate, List<DiaryEntry>> diary) {
        List<DiaryEntry> last = diary.isEmpty() ? null : diary.get(diary.lastKey());
        return last == null ? List.of() : cautions(last);
    }

    private static void add(List<String> lines, String key, String value) {
        if (!value.isBlank()) {
            lines.add(WORDS.say(key, value));
        }
    }

    /** The sorest or most painful first. */
    private static String regions(Map<String, Integer> regions) {
        List<String> words = new ArrayList<>();
        regions.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(entry -> words.add(
                        entry.getValue() == 0
                                ? WORDS.say("region.none", entry.getKey())
                                : WORDS.say(
                                        "region",
                                        entry.getKey(),
                                        entry.getValue().toString())));
        return String.join(", ", words);
    }

    private static String signs(DiaryEntry entry) {
        return String.join(
                ", ",
                entry.signs().stream()
                        .map(sign -> WORDS.knows("sign." + sign) ? WORDS.say("sign." + sign) : sign)
                        .toList());
    }

    private static String results(Map<String, String> results) {
        List<String> words = new ArrayList<>();
        new TreeMap<>(results).forEach((name, value) -> words.add(name + " " + value));
        return String.join(", ", words);
    }

    private static void effort(List<String> lines, DiaryEntry entry) {
        if (entry.effort() != null && entry.minutes() != null) {
            lines.add(WORDS.say("diary.effort", Figures.fixed(entry.effort(), 0), Math.round(entry.minutes())));
        } else if (entry.effort() != null) {
            lines.add(WORDS.say("diary.effort.only", Figures.fixed(entry.effort(), 0)));
        } else if (entry.minutes() != null) {
            lines.add(WORDS.say("diary.minutes.only", Math.round(entry.minutes())));
        }
    }
}

package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.csv.PlainNumber;
import evenfall.report.log.DiaryEntry;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** A diary as text for a person at a terminal: one paragraph a day, one line an entry. */
public final class DiaryText {

    private static final Words WORDS = Words.beside(DiaryText.class);

    private DiaryText() {}

    /** Writes the diary; says so when it is empty. */
    public static void write(SortedMap<LocalDate, SortedMap<Integer, DiaryEntry>> diary, Appendable out)
            throws IOException {
        if (diary.isEmpty()) {
            out.append(WORDS.say("diary.empty")).append('\n');
        }
        for (Map.Entry<LocalDate, SortedMap<Integer, DiaryEntry>> day : diary.entrySet()) {
            out.append(day.getKey().toString()).append('\n');
            Set<Integer> corrected = DiaryEntry.corrected(day.getValue());
            for (Map.Entry<Integer, DiaryEntry> numbered : day.getValue().entrySet()) {
                DiaryEntry entry = numbered.getValue();
                out.append("  ").append(numbered.getKey().toString()).append("  ");
                if (corrected.contains(numbered.getKey())) {
                    out.append(WORDS.say("diary.corrected")).append(' ');
                }
                if (entry.corrects() != null) {
                    out.append(WORDS.say("diary.instead", entry.corrects().toString()))
                            .append(' ');
                }
                out.append(String.join("; ", parts(entry))).append('\n');
            }
        }
    }

    private static List<String> parts(DiaryEntry entry) {
        List<String> parts = new ArrayList<>();
        regions(parts, "diary.pain", entry.pain());
        if (!entry.signs().isEmpty()) {
            parts.add(WORDS.say("diary.signs", String.join(", ", entry.signs())));
        }
        regions(parts, "diary.soreness", entry.soreness());
        if (entry.effort() != null) {
            parts.add(WORDS.say("diary.effort", PlainNumber.of(entry.effort())));
        }
        if (entry.minutes() != null) {
            parts.add(WORDS.say("diary.minutes", PlainNumber.of(entry.minutes())));
        }
        entry.results().forEach((name, value) -> parts.add(name + " " + value));
        if (entry.cue() != null) {
            parts.add(WORDS.say("diary.cue", entry.cue()));
        }
        if (entry.note() != null) {
            parts.add(entry.note());
        }
        return parts;
    }

    private static void regions(List<String> parts, String key, Map<String, Integer> regions) {
        if (!regions.isEmpty()) {
            parts.add(WORDS.say(
                    key,
                    regions.entrySet().stream()
                            .map(region ->
                                    WORDS.say("diary.region", region.getKey(), String.valueOf(region.getValue())))
                            .collect(Collectors.joining(", "))));
        }
    }
}

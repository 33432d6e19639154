package evenfall.report.round;

import evenfall.report.log.DiaryEntry;
import evenfall.report.log.Now;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Answers as entries of the diary. That nothing was sore or hurt is an answer too. */
final class DiaryAnswers {

    private DiaryAnswers() {}

    /** To what is sore, what hurts, and which signs there are. */
    static DiaryEntry feeling(Map<String, Integer> soreness, Map<String, Integer> pain, List<String> signs) {
        return entry(orNothing(soreness), orNothing(pain), signs, null, null);
    }

    /** To what is sore the day after. */
    static DiaryEntry soreness(Map<String, Integer> soreness) {
        return entry(orNothing(soreness), Map.of(), List.of(), null, null);
    }

    /** To how hard it was and how long it lasted. */
    static DiaryEntry effort(double effort, double minutes) {
        return entry(Map.of(), Map.of(), List.of(), effort, minutes);
    }

    /** The same answer instead of the entry of that number of the day, if any. */
    static DiaryEntry instead(DiaryEntry entry, @Nullable Integer mistake) {
        return new DiaryEntry(
                entry.writtenAt(),
                entry.soreness(),
                entry.pain(),
                entry.signs(),
                entry.effort(),
                entry.minutes(),
                entry.results(),
                entry.cue(),
                entry.note(),
                mistake);
    }

    private static Map<String, Integer> orNothing(Map<String, Integer> regions) {
        return regions.isEmpty() ? Map.of(BodyPart.WHOLE, 0) : regions;
    }

    private static DiaryEntry entry(
            Map<String, Integer> soreness,
            Map<String, Integer> pain,
            List<String> signs,
            @Nullable Double effort,
            @Nullable Double minutes) {
        return new DiaryEntry(Now.text(), soreness, pain, signs, effort, minutes, Map.of(), null, null);
    }
}

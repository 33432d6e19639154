package evenfall.report.weeks;

import evenfall.ingest.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Asks about results that have not changed for weeks. Which way is better is not known, so only flat is flat. */
final class FlatResults {

    private static final Words WORDS = Words.beside(FlatResults.class);

    /** Fewer say nothing of what lies between. */
    private static final int FEWEST = 3;

    /** A result that has moved by less than this share of itself has not changed: common practice, no source. */
    private static final double SHARE = 0.05;

    private FlatResults() {}

    private record Value(LocalDate day, double value, String text) {}

    static List<String> of(List<DiaryDay> days, int flatWeeks) {
        Map<String, List<Value>> courses = new LinkedHashMap<>();
        for (DiaryDay day : days) {
            day.results()
                    .forEach((name, text) -> ResultValue.of(text)
                            .ifPresent(result -> courses.computeIfAbsent(name, key -> new ArrayList<>())
                                    .add(new Value(day.date(), result.value(), text))));
        }
        List<String> questions = new ArrayList<>();
        courses.forEach((name, values) -> {
            Value last = values.get(values.size() - 1);
            int first = values.size() - 1;
            while (first > 0
                    && Math.abs(values.get(first - 1).value() - last.value()) <= SHARE * Math.abs(last.value())) {
                first--;
            }
            LocalDate since = values.get(first).day();
            if (values.size() - first >= FEWEST && !since.plusWeeks(flatWeeks).isAfter(last.day())) {
                long weeks = java.time.temporal.ChronoUnit.WEEKS.between(since, last.day());
                questions.add(WORDS.say("flat", name, last.text(), Long.toString(weeks)));
            }
        });
        return questions;
    }
}

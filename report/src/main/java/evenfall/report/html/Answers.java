package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Judged;
import evenfall.report.form.Reason;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The answer to one of the four questions in a word or two, so that nobody must find it among the figures. */
final class Answers {

    private static final Words WORDS = Words.beside(Answers.class);

    private Answers() {}

    /**
     * Held, failed or not to be judged; empty for what is only shown.
     *
     * @param question the question, or null
     * @param verdict on the landing, or null where it was not judged
     */
    static String of(@Nullable FormQuestion question, @Nullable FormVerdict verdict, @Nullable Measures measures) {
        if (question == null) {
            return "";
        }
        // What is usual at the height takes part only where it is known, and is not missing where it is not.
        List<Judged> asked = Arrays.stream(Judged.values())
                .filter(judged -> judged.question() == question && judged != Judged.PEAK)
                .toList();
        long known = measures == null
                ? 0
                : asked.stream()
                        .filter(judged -> judged.value(measures) != null)
                        .count();
        if (verdict != null && isFailed(question, verdict)) {
            return WORDS.say("answer.failed");
        }
        if (verdict == null || verdict.form() == null || known == 0) {
            return WORDS.say("answer.unknown");
        }
        return WORDS.say(known < asked.size() ? "answer.held.partly" : "answer.held");
    }

    private static boolean isFailed(FormQuestion question, FormVerdict verdict) {
        return verdict.reasons().stream()
                .filter(Reason::over)
                .map(Reason::question)
                .anyMatch(question::equals);
    }
}

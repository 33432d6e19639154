package evenfall.report.form;

import evenfall.ingest.words.Words;

/** The four questions a landing is judged by. */
public enum FormQuestion {
    TAKES_UP_THE_FALL("question.fall"),
    STAYS_EVEN("question.even"),
    STAYS_OVER_THE_FEET("question.feet"),
    SPINE_STAYS_LONG("question.spine");

    private static final Words WORDS = Words.beside(FormQuestion.class);

    private final String key;

    FormQuestion(String key) {
        this.key = key;
    }

    /** The question as a person asks it. */
    public String words() {
        return WORDS.say(key);
    }
}

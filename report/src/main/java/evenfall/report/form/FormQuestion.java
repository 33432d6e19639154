package evenfall.report.form;

/** The four questions a landing is judged by. */
public enum FormQuestion {
    TAKES_UP_THE_FALL("does the body take up the fall"),
    STAYS_EVEN("does it stay even"),
    STAYS_OVER_THE_FEET("does it stay over the feet"),
    SPINE_STAYS_LONG("does the spine stay long");

    private final String words;

    FormQuestion(String words) {
        this.words = words;
    }

    /** The question as a person asks it. */
    public String words() {
        return words;
    }
}

package evenfall.report.coaching;

/**
 * Something to say.
 *
 * @param text one sentence
 * @param written whether it is to be written too; else it was already
 * @param spoken whether it is to be spoken where there is a voice
 * @param urgent whether it breaks off whatever is being spoken
 */
public record Utterance(String text, boolean written, boolean spoken, boolean urgent) {

    /** Written and spoken. */
    static Utterance said(String text) {
        return new Utterance(text, true, true, false);
    }

    /** Only written. */
    static Utterance written(String text) {
        return new Utterance(text, true, false, false);
    }
}

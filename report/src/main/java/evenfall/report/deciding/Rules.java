package evenfall.report.deciding;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.setting.Settings;
import java.io.IOException;
import java.util.function.Consumer;

/**
 * The rules that hold for an athlete.
 *
 * @param settings what is set, and what a coach starts from for the rest
 * @param unreadable whether a file of the coach could not be read, so that a rule or a limit of it may be missing here
 */
public record Rules(Settings settings, boolean unreadable) {

    private static final Words WORDS = Words.beside(Rules.class);

    /** Where nobody set anything. */
    public static final Rules STARTING = new Rules(Settings.starting(RuleSettings.LIST), false);

    /**
     * The rules of a log for an athlete.
     *
     * @param tell told, in a sentence, if the file cannot be understood: then the starting rules hold
     */
    public static Rules of(AthleteFolder athlete, Consumer<String> tell) throws IOException {
        try {
            return new Rules(athlete.settings(RuleSettings.LIST), false);
        } catch (UnusableInputException e) {
            tell.accept(WORDS.say("rules.starting", String.valueOf(e.getMessage())));
            return new Rules(STARTING.settings(), true);
        }
    }

    /** The same where the coach's limits cannot be read either, if so. */
    public Rules missingSome(boolean limitsUnreadable) {
        return new Rules(settings, unreadable || limitsUnreadable);
    }

    /** Most landings a session may have by the coach's own cap; {@link RuleSettings#NO_CAP} where none is set. */
    public int cap() {
        return whole(RuleSettings.CAP);
    }

    /** For so many weeks a result must stand still to be asked about. */
    public int flatWeeks() {
        return whole(RuleSettings.FLAT_WEEKS);
    }

    int lostInARow() {
        return whole(RuleSettings.LOST_IN_A_ROW);
    }

    /** In this share of the landings, of 1, form must be held at a height to count as held there. */
    public double heldShare() {
        return settings.value(RuleSettings.HELD_SHARE) / 100;
    }

    double stepUpM() {
        return settings.value(RuleSettings.STEP_UP);
    }

    int sore() {
        return whole(RuleSettings.SORE);
    }

    double sameFault() {
        return settings.value(RuleSettings.SAME_FAULT) / 100;
    }

    int cueSessions() {
        return whole(RuleSettings.CUE_SESSIONS);
    }

    private int whole(String name) {
        return (int) Math.round(settings.value(name));
    }
}

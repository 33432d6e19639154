package evenfall.report.coaching;

import java.util.Locale;
import java.util.Optional;

/** When an athlete hears something: the coach chooses. */
public enum TalkChoice {
    /** After every landing that was not as usual. */
    EVERY,
    /** After every third landing, if it was not as usual. */
    THIRD,
    /** The session in a sentence, at its end. */
    END,
    /** Never, but for falls. */
    NONE;

    /** The choice of that name in lower case; empty for any other word. */
    public static Optional<TalkChoice> named(String word) {
        for (TalkChoice choice : values()) {
            if (choice.code().equals(word)) {
                return Optional.of(choice);
            }
        }
        return Optional.empty();
    }

    /** The word a coach writes. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}

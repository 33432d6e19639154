package evenfall.report.round;

import java.time.LocalDate;

/**
 * An answer that somebody still owes.
 *
 * @param person who
 * @param kind to what
 * @param training the day of the session it is about
 */
public record Debt(Person person, Kind kind, LocalDate training) {

    /** What is asked. */
    public enum Kind {
        /** How hard the session was, asked half an hour after it. */
        EFFORT,
        /** What is sore, asked the day after. */
        SORENESS
    }

    /** The day of the diary its answer belongs to. */
    LocalDate day() {
        return kind == Kind.EFFORT ? training : training.plusDays(1);
    }
}

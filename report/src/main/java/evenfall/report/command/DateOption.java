package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.log.SessionDate;
import java.time.LocalDate;
import java.time.ZoneId;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads days and dates of sessions. */
final class DateOption {

    private static final Words WORDS = Words.beside(DateOption.class);

    /** Sensors of this kind are younger: an earlier year is a slip, and weeks would be counted from it. */
    private static final int EARLIEST_YEAR = 1990;

    private DateOption() {}

    /** Says so where a day is still to come: a slip of the keys, and the weeks would be counted from it. */
    static void tellIfAhead(LocalDate day, Console console) {
        if (day.isAfter(LocalDate.now(ZoneId.systemDefault()))) {
            console.say(WORDS.say("date.ahead", day));
        }
    }

    private static boolean mayBeMeant(LocalDate day) {
        return day.getYear() >= EARLIEST_YEAR;
    }

    /** Reads {@code YYYY-MM-DD[-N]}; the first of a day bears no number. */
    static final class OfSession implements ITypeConverter<SessionDate> {

        @Override
        public SessionDate convert(String text) {
            return SessionDate.parse(text)
                    .filter(date -> mayBeMeant(date.day()))
                    .map(date -> date.number() == 1 ? new SessionDate(date.day(), 0) : date)
                    .orElseThrow(() -> new TypeConversionException(WORDS.say("date.session", text)));
        }
    }

    /** Reads {@code YYYY-MM-DD}. */
    static final class OfDay implements ITypeConverter<LocalDate> {

        @Override
        public LocalDate convert(String text) {
            return SessionDate.parse(text)
                    .filter(date -> date.number() == 0)
                    .map(SessionDate::day)
                    .orElseThrow(() -> new TypeConversionException(WORDS.say("date.day", text)));
        }
    }
}

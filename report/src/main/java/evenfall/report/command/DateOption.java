package evenfall.report.command;

import evenfall.report.log.SessionDate;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads days and dates of sessions. */
final class DateOption {

    private DateOption() {}

    /** Reads {@code YYYY-MM-DD[-N]}. */
    static final class OfSession implements ITypeConverter<SessionDate> {

        @Override
        public SessionDate convert(String text) {
            return SessionDate.parse(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is no date such as 2026-03-02 or, for a second session, 2026-03-02-2"));
        }
    }

    /** Reads {@code YYYY-MM-DD}. */
    static final class OfDay implements ITypeConverter<LocalDate> {

        @Override
        public LocalDate convert(String text) {
            return SessionDate.parse(text)
                    .filter(date -> date.number() == 0)
                    .map(SessionDate::day)
                    .orElseThrow(() -> new TypeConversionException("'" + text + "' is no date such as 2026-03-02"));
        }
    }
}

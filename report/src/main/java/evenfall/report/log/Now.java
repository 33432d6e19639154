package evenfall.report.log;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** The moment something is written down. */
public final class Now {

    private Now() {}

    /** Now, ISO 8601 with offset, to the millisecond. */
    public static String text() {
        return OffsetDateTime.now(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MILLIS)
                .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
}

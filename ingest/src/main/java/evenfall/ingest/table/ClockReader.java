package evenfall.ingest.table;

/** Turns what stands in the time column into seconds of the sensor's clock, over wraps of a counter. */
final class ClockReader {

    private static final long DAY = 24 * 3600 * 1_000_000_000L;

    private final TimeForm form;
    private double lastRaw;
    private double wraps;
    private boolean started;
    private long lastNanos;
    private long midnights;

    ClockReader(TimeForm form) {
        this.form = form;
    }

    /** A date and time as it is; a time of day alone over midnight. */
    private long instant(long nanos) {
        if (nanos >= 0 && nanos < DAY && lastNanos < DAY) {
            if (lastNanos - nanos > DAY / 2) {
                midnights++;
            } else if (nanos - lastNanos > DAY / 2 && midnights > 0) {
                midnights--;
            }
        }
        lastNanos = nanos;
        return nanos + midnights * DAY;
    }

    /** The time of a row, s; {@code rows} is how many came before it, for evenly spaced samples. */
    double seconds(Row row, long rows) {
        if (form.column() < 0) {
            return rows * form.secondsPerUnit();
        }
        if (form.unit() == Unit.ISO_8601) {
            return instant(row.nanos) / 1e9;
        }
        double raw = row.time;
        if (form.wrapsAt() > 0) {
            // A step back by more than half the range is a wrap, one ahead by more than half a wrap undone.
            if (started && lastRaw - raw > form.wrapsAt() / 2) {
                wraps++;
            } else if (started && raw - lastRaw > form.wrapsAt() / 2 && wraps > 0) {
                wraps--;
            }
            started = true;
            lastRaw = raw;
            raw += wraps * form.wrapsAt();
        }
        return raw * form.secondsPerUnit();
    }
}

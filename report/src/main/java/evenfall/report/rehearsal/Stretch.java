package evenfall.report.rehearsal;

/**
 * A stretch of a recording.
 *
 * @param fromS its beginning, s from the beginning of the recording
 * @param toS its end, not in it, s
 */
public record Stretch(double fromS, double toS) {

    /** Refuses a stretch that begins before 0 or ends before it begins. */
    public Stretch {
        if (!(fromS >= 0 && toS > fromS)) {
            throw new IllegalArgumentException("no stretch: " + fromS + ".." + toS);
        }
    }

    /** Whether a moment is in it. */
    public boolean contains(double timeS) {
        return timeS >= fromS && timeS < toS;
    }
}

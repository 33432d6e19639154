package evenfall.report.film;

/**
 * A film's clock against the recording's: film time = (recording time - startsS) (1 + driftPpm 1e-6), both in s, each from
 * its own beginning.
 *
 * @param startsS when the film begins on the recording's clock, s; negative if it ran first
 * @param driftPpm how much faster the film's clock runs, parts in a million
 */
public record FilmClock(double startsS, double driftPpm) {

    /** A film that began with the recording and keeps its time. */
    public static final FilmClock SAME = new FilmClock(0, 0);

    /** Two moments nearer than this say nothing of drift: a picture's length over it is a thousand parts in a million, s. */
    public static final double LEAST_APART_S = 30;

    private static final double PART = 1e-6;

    public FilmClock {
        if (!Double.isFinite(startsS) || !(Math.abs(driftPpm) < 1 / PART)) {
            throw new IllegalArgumentException("a film cannot start at " + startsS + " and drift by " + driftPpm);
        }
    }

    /** The clock by one moment seen in the film, without drift. */
    public static FilmClock through(double recordingS, double filmS) {
        return new FilmClock(recordingS - filmS, 0);
    }

    /** The clock by two moments seen in the film, or by the later one alone where they are too near for drift. */
    public static FilmClock through(double recordingS, double filmS, double laterS, double laterFilmS) {
        if (Math.abs(laterS - recordingS) < LEAST_APART_S) {
            return through(laterS, laterFilmS);
        }
        double rate = (laterFilmS - filmS) / (laterS - recordingS);
        return new FilmClock(recordingS - filmS / rate, (rate - 1) / PART);
    }

    /** Where a moment of the recording is in the film, s; negative before it begins. */
    public double filmS(double recordingS) {
        return (recordingS - startsS) * (1 + driftPpm * PART);
    }
}

package evenfall.report.live;

import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.DiskRoom;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Says when the disk gets short of room for a recording. Not safe for use from several threads. */
public final class DiskReport {

    private static final Words WORDS = Words.beside(DiskReport.class);

    /** A long session with all that goes with it, minutes. */
    static final double ENOUGH_MIN = 180;

    /** Below this nothing is begun, minutes. */
    static final double LEAST_MIN = 5;

    /** Told again below each of these, minutes. */
    private static final double[] SHORT_MIN = {10, 2};

    private static final double BETWEEN_S = 5;

    /** A sensor that is hardly heard may speak up, bytes a second. */
    private static final double SLOWEST = 20_000;

    private final Path folder;
    private double lookedS = Double.NEGATIVE_INFINITY;
    private int told;

    /** A report on the disk that holds {@code folder}. */
    public DiskReport(Path folder) {
        this.folder = folder;
    }

    /**
     * What to say before a recording, if anything: by the fastest that two sensors can send.
     *
     * @throws DiskFullException if there is hardly any room
     */
    public Optional<String> before() throws IOException {
        double minutes = DiskRoom.minutes(folder, DiskRoom.FASTEST);
        if (minutes < LEAST_MIN) {
            throw new DiskFullException(WORDS.say("disk.full", folder));
        }
        return minutes >= ENOUGH_MIN
                ? Optional.empty()
                : Optional.of(WORDS.say("disk.short", folder, String.format(Locale.ROOT, "%.0f", Math.floor(minutes))));
    }

    /**
     * What to say during a recording, if anything: by what came so far.
     *
     * @param nowS time since the recording began, s
     * @param bytes what was recorded until now
     */
    public Optional<String> during(double nowS, long bytes) throws IOException {
        if (nowS - lookedS < BETWEEN_S || told == SHORT_MIN.length) {
            return Optional.empty();
        }
        lookedS = nowS;
        double minutes = DiskRoom.minutes(folder, Math.max(SLOWEST, bytes / Math.max(nowS, BETWEEN_S)));
        boolean isShort = false;
        while (told < SHORT_MIN.length && minutes < SHORT_MIN[told]) {
            told++;
            isShort = true;
        }
        return isShort ? Optional.of(WORDS.say("disk.left", left(minutes))) : Optional.empty();
    }

    private static String left(double minutes) {
        return minutes < 1 ? WORDS.say("disk.left.none") : WORDS.say("disk.left.minutes", (long) Math.ceil(minutes));
    }
}

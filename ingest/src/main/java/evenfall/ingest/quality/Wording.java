package evenfall.ingest.quality;

import evenfall.ingest.words.Digits;
import java.util.List;

/** Quantities and lists as they stand in findings. */
final class Wording {

    private Wording() {}

    /** A moment, {@code 12.34 s}. */
    static String moment(double seconds) {
        return Digits.fixed(seconds, 2) + " s";
    }

    /** A length of time: {@code 65 ms}, {@code 2.3 s}, {@code 4 min 10 s}. */
    static String length(double seconds) {
        if (seconds < 0.0995) {
            return Digits.fixed(seconds * 1000, seconds < 0.00995 ? 1 : 0) + " ms";
        }
        if (seconds < 100) {
            return Digits.fixed(seconds, seconds < 9.95 ? 2 : 1) + " s";
        }
        long whole = Math.round(seconds);
        return whole / 60 + " min " + whole % 60 + " s";
    }

    /** A share in percent that does not claim more than it knows: {@code 0.3 %}, {@code 12 %}. */
    static String percent(double share) {
        double percent = 100 * share;
        if (percent > 0 && percent < 0.1) {
            return "under 0.1 %";
        }
        return Digits.fixed(percent, percent < 9.95 ? 1 : 0) + " %";
    }

    /** {@code 1 sample}, {@code 7 samples}. */
    static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    /** {@code x}, {@code x and y}, {@code x, y and z}. */
    static String and(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }
}

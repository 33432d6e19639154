package evenfall.ingest.wire;

/**
 * Consistent overhead byte stuffing: bytes written so that none of them is 0, which then can end a frame. Source:
 * Cheshire and Baker 1999, "Consistent overhead byte stuffing", doi 10.1109/90.769765.
 */
final class Cobs {

    /** A code byte of this value stands before 254 bytes with no 0 behind them. */
    private static final int FULL = 0xFF;

    private Cobs() {}

    /** The most bytes that so many may become. */
    static int longest(int length) {
        return length + length / (FULL - 1) + 1;
    }

    /**
     * Writes {@code bytes[0..length)} without zeros, from the beginning of {@code into}.
     *
     * @return how many bytes that took, the ending 0 not among them
     */
    static int encode(byte[] bytes, int length, byte[] into) {
        int codeAt = 0;
        int at = 1;
        int code = 1;
        for (int i = 0; i < length; i++) {
            if (bytes[i] != 0) {
                into[at++] = bytes[i];
                code++;
            }
            // A full piece needs no successor when nothing follows it.
            if (bytes[i] == 0 || (code == FULL && i + 1 < length)) {
                into[codeAt] = (byte) code;
                codeAt = at++;
                code = 1;
            }
        }
        into[codeAt] = (byte) code;
        return at;
    }

    /**
     * Reads {@code bytes[0..length)}, the ending 0 not among them, back in place.
     *
     * @return how many bytes that were, or -1 if a code points past the end, there is a 0 or nothing at all
     */
    static int decode(byte[] bytes, int length) {
        int at = 0;
        int out = 0;
        while (at < length) {
            int code = bytes[at++] & 0xFF;
            int end = at + code - 1;
            if (code == 0 || end > length) {
                return -1;
            }
            while (at < end) {
                byte b = bytes[at++];
                if (b == 0) {
                    return -1;
                }
                bytes[out++] = b;
            }
            if (code != FULL && at < length) {
                bytes[out++] = 0;
            }
        }
        return length == 0 ? -1 : out;
    }
}

package evenfall.ingest.wire;

/**
 * The checksum CRC-16/CCITT-FALSE, also listed as CRC-16/IBM-3740: polynomial 1021 hex, start FFFF hex, no reflection,
 * nothing added at the end.
 */
public final class Crc16 {

    /** The checksum of nothing. */
    public static final int EMPTY = 0xFFFF;

    private Crc16() {}

    /** The checksum of {@code bytes[from..to)}, 0 to FFFF hex. */
    public static int of(byte[] bytes, int from, int to) {
        int crc = EMPTY;
        for (int i = from; i < to; i++) {
            crc = with(crc, bytes[i]);
        }
        return crc;
    }

    /** The checksum of all that {@code crc} stands for and one byte more. */
    public static int with(int crc, byte next) {
        int x = ((crc >> 8) ^ next) & 0xFF;
        x ^= x >> 4;
        return ((crc << 8) ^ (x << 12) ^ (x << 5) ^ x) & 0xFFFF;
    }
}

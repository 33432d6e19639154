package evenfall.ingest.wire;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Damages bytes at random, as a bad line, a reset or a lost connection would. */
final class Spoiler {

    private static final String TEMPTING = "0123456789.,-*PB\r\n#eE";

    private Spoiler() {}

    static byte[] spoil(byte[] bytes, SplittableRandom random) {
        if (bytes.length < 4) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, random.nextInt(1, random.nextBoolean() ? 4 : 120));
        byte[] head = Arrays.copyOf(bytes, at);
        byte[] middle = Arrays.copyOfRange(bytes, at, at + length);
        byte[] tail = Arrays.copyOfRange(bytes, at + length, bytes.length);
        switch (random.nextInt(8)) {
            case 0 -> middle[0] ^= (byte) (1 << random.nextInt(8));
            case 1 -> middle = new byte[0];
            case 2 -> random.nextBytes(middle);
            case 3 -> middle = join(middle, middle);
            case 4 -> middle[0] = (byte) TEMPTING.charAt(random.nextInt(TEMPTING.length()));
            case 5 -> {
                byte[] extra = new byte[length];
                random.nextBytes(extra);
                middle = join(extra, middle);
            }
            case 6 -> middle[0] = 0;
            default -> tail = new byte[0];
        }
        return join(join(head, middle), tail);
    }

    static byte[] join(byte[] a, byte[] b) {
        byte[] joined = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, joined, a.length, b.length);
        return joined;
    }
}

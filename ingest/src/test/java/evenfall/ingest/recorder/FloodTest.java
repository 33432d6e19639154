package evenfall.ingest.recorder;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.wire.FrameDecoder;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever comes, and however much, takes no more memory than a little of it. */
class FloodTest {

    private static final long SEED = 51;
    private static final int PIECE = 1 << 16;
    private static final int PIECES = 1000;

    /** Far below the 64 MB that come, far above what a collector leaves lying about. */
    private static final long MOST = 8 << 20;

    @ParameterizedTest
    @ValueSource(strings = {"noise", "zeros", "letters", "line ends", "commas", "P,1,"})
    void rubbishTakesNoMemory(String kind) {
        SplittableRandom random = new SplittableRandom(SEED);
        PortDecoder decoder = new PortDecoder((sensor, t, ax, ay, az, gx, gy, gz) -> {}, FrameDecoder.HELD);
        byte[] piece = new byte[PIECE];
        fill(piece, kind, random);
        decoder.accept(piece, 0, PIECE);
        long before = used();
        for (int i = 0; i < PIECES; i++) {
            decoder.arrived(i);
            decoder.accept(piece, 0, PIECE);
            if (i % 100 == 99) {
                decoder.gone(i);
            }
        }

        assertThat(used() - before).as("seed %d", SEED).isLessThan(MOST);
        assertThat(decoder.counts().good()).isZero();
    }

    private static void fill(byte[] piece, String kind, SplittableRandom random) {
        for (int i = 0; i < piece.length; i++) {
            piece[i] = switch (kind) {
                case "noise" -> (byte) random.nextInt(256);
                case "zeros" -> 0;
                case "letters" -> (byte) ('a' + random.nextInt(26));
                case "line ends" -> '\n';
                case "commas" -> ',';
                default -> (byte) kind.charAt(i % kind.length());
            };
        }
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}

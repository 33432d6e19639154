package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Source: Cheshire and Baker 1999; reference W5 to W8. */
class CobsTest {

    private static final long SEED = 31;

    static List<WireVectors.Vector> vectors() {
        return WireVectors.of("cobs");
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void theReferenceValuesComeOut(WireVectors.Vector vector) {
        byte[] message = WireVectors.bytes(vector.what());

        assertThat(WireVectors.hex(encode(message))).isEqualTo(vector.hex());
        assertThat(decode(vector.bytes())).isEqualTo(message);
    }

    /** A code past the end, a 0 inside, nothing at all. */
    @ParameterizedTest
    @ValueSource(strings = {"", "05 11 22", "02", "FF 01", "00", "03 11 00", "02 11 00 01", "03 00 11"})
    void whatIsNotStuffedIsRefused(String hex) {
        byte[] bytes = WireVectors.bytes(hex);

        assertThat(Cobs.decode(bytes, bytes.length)).isEqualTo(-1);
    }

    /** Property: any message comes back, holds no 0 meanwhile, and grows by no more than the paper's bound. */
    @Test
    void anyMessageComesBack() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < 20_000; k++) {
            byte[] message = new byte[random.nextInt(k % 10 == 0 ? 1200 : 300)];
            int zeros = random.nextInt(1, 400);
            for (int i = 0; i < message.length; i++) {
                message[i] = (byte) (random.nextInt(zeros) == 0 ? 0 : random.nextInt(1, 256));
            }
            byte[] stuffed = encode(message);

            assertThat(decode(stuffed.clone()))
                    .as("message %d, seed %d", k, SEED)
                    .isEqualTo(message);
            for (byte b : stuffed) {
                assertThat(b).as("message %d, seed %d", k, SEED).isNotZero();
            }
            assertThat(stuffed.length).isBetween(message.length + 1, message.length + 1 + message.length / 254);
        }
    }

    /** Property: bytes that can be read at all are read as a message that is written as these bytes. */
    @Test
    void noTwoWritingsReadAsTheSame() {
        SplittableRandom random = new SplittableRandom(SEED);
        int read = 0;
        for (int k = 0; k < 100_000; k++) {
            byte[] bytes = new byte[random.nextInt(1, 12)];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] = (byte) random.nextInt(1, random.nextBoolean() ? 5 : 256);
            }
            byte[] copy = bytes.clone();
            int length = Cobs.decode(copy, copy.length);
            if (length >= 0) {
                read++;
                assertThat(encode(Arrays.copyOf(copy, length)))
                        .as("bytes %d, seed %d", k, SEED)
                        .isEqualTo(bytes);
            }
        }
        assertThat(read).isGreaterThan(1000);
    }

    private static byte[] encode(byte[] message) {
        byte[] into = new byte[Cobs.longest(message.length)];
        return Arrays.copyOf(into, Cobs.encode(message, message.length, into));
    }

    private static byte[] decode(byte[] stuffed) {
        return Arrays.copyOf(stuffed, Cobs.decode(stuffed, stuffed.length));
    }
}

package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Streams of lines with checksums, damaged at random: what still reads must be one of the samples that were sent. */
class LineFuzzTest {

    private static final long SEED = 20260817;
    private static final int STREAMS = 5000;
    private static final int LINES = 30;

    @Test
    void damagedStreamsNeverReadAsSamplesThatWereNotSent() {
        SplittableRandom random = new SplittableRandom(SEED);
        long sent = 0;
        long read = 0;
        for (int stream = 0; stream < STREAMS; stream++) {
            Set<Sample> original = new HashSet<>();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            LineDecoder clean = new LineDecoder(
                    (sensor, t, ax, ay, az, gx, gy, gz) -> original.add(Sample.of(sensor, t, ax, ay, az, gx, gy, gz)));
            for (int i = 0; i < LINES; i++) {
                byte[] line = Sample.random(random, i * 0.005).line();
                bytes.writeBytes(line);
                clean.accept(line, 0, line.length);
            }
            byte[] spoilt = bytes.toByteArray();
            for (int k = random.nextInt(1, 6); k > 0; k--) {
                spoilt = spoil(spoilt, random);
            }
            int number = stream;
            int[] count = {0};
            LineDecoder decoder = new LineDecoder((sensor, t, ax, ay, az, gx, gy, gz) -> {
                count[0]++;
                assertThat(original)
                        .as("stream %d, seed %d", number, SEED)
                        .contains(Sample.of(sensor, t, ax, ay, az, gx, gy, gz));
            });
            decoder.accept(spoilt, 0, spoilt.length);
            decoder.end();
            assertThat(decoder.counts().good()).isEqualTo(count[0]);
            sent += LINES;
            read += count[0];
        }

        // Most lines of a stream are untouched and must come through.
        assertThat(read).isGreaterThan(sent / 2).isLessThan(sent);
    }

    @Test
    void rubbishNeitherFailsNorTakesMemory() {
        SplittableRandom random = new SplittableRandom(SEED);
        byte[] rubbish = new byte[1 << 16];
        LineDecoder decoder = new LineDecoder((sensor, t, ax, ay, az, gx, gy, gz) -> {});
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        random.nextBytes(rubbish);
        decoder.accept(rubbish, 0, rubbish.length);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int k = 0; k < 300; k++) {
            decoder.accept(rubbish, 0, rubbish.length);
            Arrays.fill(rubbish, (byte) (32 + k % 90));
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;

        // 20 MB of rubbish, half of it without a single line end.
        assertThat(allocated).isLessThan(64 * 1024);
        assertThat(decoder.counts().good()).isZero();
        assertThat(decoder.counts().bad()).isPositive();
    }

    private static byte[] spoil(byte[] bytes, SplittableRandom random) {
        if (bytes.length < 4) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, random.nextInt(1, random.nextBoolean() ? 4 : 120));
        byte[] head = Arrays.copyOf(bytes, at);
        byte[] middle = Arrays.copyOfRange(bytes, at, at + length);
        byte[] tail = Arrays.copyOfRange(bytes, at + length, bytes.length);
        switch (random.nextInt(7)) {
            case 0 -> middle[0] ^= (byte) (1 << random.nextInt(8));
            case 1 -> middle = new byte[0];
            case 2 -> random.nextBytes(middle);
            case 3 -> middle = join(middle, middle);
            case 4 -> middle[0] = (byte) "0123456789.,-*PB\r\n#eE".charAt(random.nextInt(21));
            case 5 -> {
                byte[] extra = new byte[length];
                random.nextBytes(extra);
                middle = join(extra, middle);
            }
            default -> tail = new byte[0];
        }
        return join(join(head, middle), tail);
    }

    private static byte[] join(byte[] a, byte[] b) {
        byte[] joined = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, joined, a.length, b.length);
        return joined;
    }
}

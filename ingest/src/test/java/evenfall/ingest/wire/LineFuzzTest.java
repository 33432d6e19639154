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
                spoilt = Spoiler.spoil(spoilt, random);
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
}

package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import evenfall.ingest.place.Place;
import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Streams of frames, damaged at random: what still reads must be one of the samples that were sent. */
class FrameFuzzTest {

    private static final long SEED = 20261126;
    private static final int STREAMS = 5000;
    private static final int FRAMES = 40;
    private static final int BETWEEN_HELLOS = 8;

    /** Sixteen sensors hold 4096 samples of 18 bytes, in columns that grew by doubling. */
    private static final long HELD_BYTES = 2L * 16 * FrameDecoder.HELD * 18;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void damagedStreamsNeverReadAsSamplesThatWereNotSent(boolean either) {
        SplittableRandom random = new SplittableRandom(SEED);
        Function<WireReceiver, WireDecoder> decoders = either ? EitherDecoder::new : FrameDecoder::new;
        long sent = 0;
        long read = 0;
        for (int stream = 0; stream < STREAMS; stream++) {
            byte[] bytes = stream(random);
            Heard clean = new Heard();
            WireDecoder witness = new FrameDecoder(clean);
            witness.accept(bytes, 0, bytes.length);
            Set<Heard.Row> original = new HashSet<>(clean.rows);
            for (int k = random.nextInt(1, 6); k > 0; k--) {
                bytes = Spoiler.spoil(bytes, random);
            }

            Heard heard = new Heard();
            WireDecoder decoder = decoders.apply(heard);
            decoder.accept(bytes, 0, bytes.length);
            decoder.end();

            // By chance one damaged frame in 65536 has a checksum that fits; none of these does.
            assertThat(original).as("stream %d, seed %d", stream, SEED).containsAll(heard.rows);
            assertThat(decoder.counts().good()).isEqualTo(heard.rows.size());
            assertThat(decoder.counts().good() + decoder.counts().lost())
                    .as("stream %d, seed %d", stream, SEED)
                    .isLessThanOrEqualTo(FRAMES);
            sent += FRAMES;
            read += heard.rows.size();
        }

        // Most frames of a stream are untouched and must come through.
        assertThat(read).isGreaterThan(sent / 2).isLessThan(sent);
    }

    @Test
    void rubbishNeitherFailsNorTakesMemory() {
        SplittableRandom random = new SplittableRandom(SEED);
        byte[] rubbish = new byte[1 << 16];
        EitherDecoder decoder = new EitherDecoder(new Heard());
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        random.nextBytes(rubbish);
        decoder.accept(rubbish, 0, rubbish.length);
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int k = 0; k < 300; k++) {
            decoder.accept(rubbish, 0, rubbish.length);
            Arrays.fill(rubbish, (byte) k);
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;

        // 20 MB of rubbish, most of it without a single end of frame or line.
        assertThat(allocated).isLessThan(64 * 1024);
        assertThat(decoder.counts().good()).isZero();
        assertThat(decoder.counts().bad()).isPositive();
    }

    /** Whole frames of ever new sensors that never say what they are. */
    @Test
    void aFloodOfSensorsTakesNoMoreThanItsBound() {
        SplittableRandom random = new SplittableRandom(SEED);
        ByteArrayOutputStream flood = new ByteArrayOutputStream();
        for (int k = 0; k < 2000; k++) {
            flood.writeBytes(FrameWriter.sample(random.nextInt(1 << 16), k, k * 5000L, new short[6]));
        }
        byte[] bytes = flood.toByteArray();
        Heard heard = new Heard();
        EitherDecoder decoder = new EitherDecoder(heard);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        for (int k = 0; k < 5000; k++) {
            decoder.accept(bytes, 0, bytes.length);
        }
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;

        // 10 million samples, 240 MB.
        assertThat(allocated).isLessThan(HELD_BYTES + 64 * 1024);
        assertThat(heard.rows).isEmpty();
        assertThat(decoder.counts().unreadable()).isGreaterThan(9_000_000);
    }

    /** Two sensors, mixed, with hellos, some samples lost. */
    private static byte[] stream(SplittableRandom random) {
        FakeSensor pelvis = new FakeSensor(SensorId.PELVIS, Place.PELVIS, random.nextInt(70_000), 1000);
        FakeSensor other = new FakeSensor(0xBEEF, null, random.nextInt(70_000), random.nextLong(1L << 33));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < FRAMES; i++) {
            if (i % BETWEEN_HELLOS == 0) {
                bytes.writeBytes(pelvis.hello());
                bytes.writeBytes(other.hello());
            }
            bytes.writeBytes(random.nextBoolean() ? pelvis.next() : other.next());
        }
        return bytes.toByteArray();
    }
}

package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Either form is recognised by itself, and what the other makes of its bytes is not held against the port. */
class EitherDecoderTest {

    private static final long SEED = 4;

    private final Heard heard = new Heard();
    private final EitherDecoder decoder = new EitherDecoder(heard);
    private final FakeSensor sensor = new FakeSensor(SensorId.PELVIS, Place.PELVIS, 0, 1_000_000);

    @Test
    void textIsRecognised() {
        feed(lines(0, 100));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(100, 0, 0, 0));
        assertThat(heard.rows).extracting(Heard.Row::sensor).containsOnly(SensorId.PELVIS);
    }

    @Test
    void framesAreRecognised() {
        feed(sensor.hello());
        feed(sensor.next(5000));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(5000, 0, 0, 0));
        assertThat(heard.lost).isEmpty();
    }

    /** The right speed of a port is known by the first frame, a second before its scale may be. */
    @Test
    void aSampleThatWaitsIsHeard() {
        feed(new byte[1]);
        feed("what is this".getBytes(StandardCharsets.US_ASCII));
        feed(new byte[1]);
        assertThat(decoder.heard()).isFalse();

        feed(sensor.next());

        assertThat(decoder.heard()).isTrue();
        assertThat(decoder.counts().good()).isZero();
    }

    @Test
    void aPortMayChangeOver() {
        feed(lines(0, 100));
        feed(new byte[1]);
        feed(sensor.hello());
        feed(sensor.next(300));
        feed("\n".getBytes(StandardCharsets.US_ASCII));
        feed(lines(20, 100));
        feed(new byte[1]);
        feed(sensor.hello());
        feed(sensor.next(300));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(800, 0, 0, 0));
    }

    @Test
    void damageIsHeldAgainstTheFormThatIsSpoken() {
        byte[] spoilt = lines(0, 10);
        spoilt[6] ^= 1;
        feed(lines(0, 10));
        feed(spoilt);
        assertThat(decoder.counts()).isEqualTo(new WireCounts(19, 1, 0, 1));

        byte[] frame = sensor.next();
        frame[8] ^= 1;
        feed(new byte[1]);
        feed(sensor.hello());
        feed(sensor.next(10));
        feed(frame);
        feed(sensor.next(10));

        // The frame was taken before the others, so its number is not missed.
        assertThat(decoder.counts()).isEqualTo(new WireCounts(39, 2, 0, 1));
    }

    @Test
    void rubbishInNeitherFormIsCountedOnce() {
        SplittableRandom random = new SplittableRandom(SEED);
        byte[] rubbish = new byte[100_000];
        random.nextBytes(rubbish);
        feed(rubbish);

        // About one byte in 256 ends a frame, one in 128 a line; whichever is more is told.
        assertThat(decoder.counts().bad()).isBetween(600L, 1000L);
    }

    /** Property: the same bytes read the same, however they are cut. */
    @Test
    void cutsChangeNothing() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int k = 0; k < 500; k++) {
            byte[] bytes = mixed(random);
            for (int i = random.nextInt(4); i > 0; i--) {
                bytes = Spoiler.spoil(bytes, random);
            }
            Heard whole = new Heard();
            EitherDecoder atOnce = new EitherDecoder(whole);
            atOnce.accept(bytes, 0, bytes.length);
            atOnce.end();
            Heard cut = new Heard();
            EitherDecoder inPieces = new EitherDecoder(cut);
            for (int from = 0; from < bytes.length; ) {
                int to = Math.min(bytes.length, from + random.nextInt(1, 60));
                inPieces.accept(bytes, from, to);
                from = to;
            }
            inPieces.end();

            assertThat(inPieces.counts()).as("stream %d, seed %d", k, SEED).isEqualTo(atOnce.counts());
            assertThat(cut.rows).as("stream %d, seed %d", k, SEED).hasSameSizeAs(whole.rows);
        }
    }

    private byte[] mixed(SplittableRandom random) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < 6; i++) {
            if (random.nextBoolean()) {
                bytes.writeBytes(lines(i, random.nextInt(20)));
            } else {
                bytes.write(0);
                bytes.writeBytes(sensor.hello());
                bytes.writeBytes(sensor.next(random.nextInt(20)));
            }
        }
        return bytes.toByteArray();
    }

    private void feed(byte[] bytes) {
        decoder.accept(bytes, 0, bytes.length);
    }

    private static byte[] lines(double fromS, int count) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < count; i++) {
            bytes.writeBytes(LineWriter.line(Place.PELVIS, fromS + i * 0.005, 0, 0, 9.8, 0, 0, 0));
        }
        return bytes.toByteArray();
    }
}

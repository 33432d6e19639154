package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.place.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Source of the frames: the wire's own specification, made bit by bit in another language (see the vectors). */
class FrameDecoderTest {

    private static final double STANDARD_GRAVITY = 9.80665;
    private static final int STRAP = 0x1A2B;
    private static final double EXACT_S = 1e-9;

    private final Heard heard = new Heard();
    private final FrameDecoder decoder = new FrameDecoder(heard);
    private final FakeSensor sensor = new FakeSensor(STRAP, null, 10, 1_000_000);

    static List<WireVectors.Vector> samples() {
        return WireVectors.of("sample");
    }

    static List<WireVectors.Vector> hellos() {
        return WireVectors.of("hello");
    }

    static List<WireVectors.Vector> others() {
        return WireVectors.all().stream()
                .filter(vector -> List.of("damaged", "unreadable", "unknown").contains(vector.kind()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theWorkedSamplesReadInSiUnitsAndAreWrittenSo(WireVectors.Vector vector) {
        String[] words = vector.words();
        int number = Integer.parseInt(words[0], 16);
        long clockUs = Long.parseLong(words[2]);
        short[] counts = new short[6];
        for (int i = 0; i < 6; i++) {
            counts[i] = Short.parseShort(words[3 + i]);
        }
        feed(FrameWriter.hello(new Hello(number, null, FakeSensor.G, FakeSensor.DEGREES, 16, 2000, 200, ""), clockUs));
        feed(vector.bytes());

        assertThat(decoder.counts()).isEqualTo(new WireCounts(1, 0, 0, 0));
        Heard.Row row = heard.rows.get(0);
        assertThat(row.sensor()).isEqualTo(number);
        assertThat(row.timeS()).isCloseTo(clockUs / 1e6, within(EXACT_S));
        assertThat(row.ax()).isEqualTo(counts[0] * (16 * STANDARD_GRAVITY / 32768));
        assertThat(row.az()).isEqualTo(counts[2] * (16 * STANDARD_GRAVITY / 32768));
        assertThat(row.gy()).isCloseTo(Math.toRadians(counts[4] * 2000.0 / 32768), within(1e-12));
        assertThat(WireVectors.hex(FrameWriter.sample(number, Integer.parseInt(words[1]), clockUs, counts)))
                .isEqualTo(vector.hex());
    }

    @ParameterizedTest
    @MethodSource("hellos")
    void theWorkedHellosReadAndAreWrittenSo(WireVectors.Vector vector) {
        String[] words = vector.words();
        feed(vector.bytes());

        Hello hello = heard.hellos.get(0);
        assertThat(SensorId.text(hello.sensor())).isEqualTo(words[0]);
        Place place = hello.place();
        assertThat(place == null ? "-" : place.code()).isEqualTo(words[2]);
        assertThat(List.of(
                        hello.accelerationScale(),
                        hello.turnRateScale(),
                        hello.accelerationRange(),
                        hello.turnRateRange(),
                        hello.rateHz()))
                .isEqualTo(Arrays.stream(words, 3, 8).map(Float::valueOf).toList());
        assertThat(hello.name()).isEqualTo(String.join(" ", Arrays.asList(words).subList(8, words.length)));
        assertThat(WireVectors.hex(FrameWriter.hello(hello, Long.parseLong(words[1]))))
                .isEqualTo(vector.hex());
        assertThat(decoder.counts()).isEqualTo(WireCounts.NONE);
    }

    @ParameterizedTest
    @MethodSource("others")
    void whatIsNoSampleIsCountedForWhatItIs(WireVectors.Vector vector) {
        feed(sensor.hello());
        feed(vector.bytes());

        WireCounts counts = decoder.counts();
        assertThat(counts.damaged()).isEqualTo(vector.kind().equals("damaged") ? 1 : 0);
        assertThat(counts.unreadable()).isEqualTo(vector.kind().equals("unreadable") ? 1 : 0);
        assertThat(counts.unknown()).isEqualTo(vector.kind().equals("unknown") ? 1 : 0);
        assertThat(heard.rows).isEmpty();
    }

    @Test
    void aLaterHelloMayBeLonger() {
        byte[] known = {(byte) 0x12, 0x2B, 0x1A};
        byte[] frame = sensor.hello();
        byte[] plain = frame.clone();
        int length = Cobs.decode(plain, plain.length - 1) - 2;
        byte[] longer = Arrays.copyOf(plain, length + 5);
        Arrays.fill(longer, length, length + 5, (byte) 7);
        feed(stuffed(longer));

        assertThat(longer).startsWith(known);
        assertThat(heard.hellos).hasSize(1);
    }

    @Test
    void samplesBeforeTheFirstHelloAreGivenWithIt() {
        feed(sensor.next(150));
        assertThat(heard.rows).isEmpty();
        assertThat(decoder.counts()).isEqualTo(WireCounts.NONE);

        feed(sensor.hello());
        feed(sensor.next(50));

        assertThat(heard.rows).hasSize(200);
        assertThat(decoder.counts()).isEqualTo(new WireCounts(200, 0, 0, 0));
        assertTimesStep(1.0, 200);
    }

    @Test
    void noMoreThanABoundedNumberWaitsForTheFirstHello() {
        feed(sensor.next(FrameDecoder.HELD + 100));
        feed(sensor.hello());

        assertThat(heard.rows).hasSize(FrameDecoder.HELD);
        assertThat(heard.rows.get(0).timeS()).isCloseTo(1.5, within(EXACT_S));
        assertThat(decoder.counts()).isEqualTo(new WireCounts(FrameDecoder.HELD, 0, 100, 0));
    }

    @Test
    void samplesWhoseScaleIsNeverToldAreUnreadable() {
        feed(sensor.next(30));
        decoder.end();

        assertThat(decoder.counts()).isEqualTo(new WireCounts(0, 0, 30, 0));
    }

    /** Whole rounds of the numbering are told by the clock: 65536 samples at 200 Hz are 328 s. */
    @ParameterizedTest
    @CsvSource({"1", "2", "199", "11000", "65534", "65535", "65536", "65537", "131072", "200000", "400000"})
    void lostSamplesAreCountedThroughAnyNumberOfRounds(long lost) {
        feed(sensor.hello());
        feed(sensor.next(20));
        sensor.skip(lost);
        feed(sensor.hello());
        feed(sensor.next(20));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(40, 0, 0, lost));
        assertThat(heard.lost).isEqualTo(Map.of(STRAP, lost));
    }

    @Test
    void theNumberingMayComeRound() {
        FakeSensor old = new FakeSensor(STRAP, null, 65_530, 1_000_000);
        feed(old.hello());
        feed(old.next(4));
        old.skip(3);
        feed(old.next(10));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(14, 0, 0, 3));
    }

    @Test
    void theClockMayComeRound() {
        FakeSensor old = new FakeSensor(STRAP, null, 0, (1L << 32) - 100 * FakeSensor.PERIOD_US + 7);
        double start = old.clockS();
        feed(old.hello());
        feed(old.next(300));

        assertThat(heard.rows).hasSize(300);
        assertTimesStep(start, 300);
    }

    /** Two hours of silence are more than the 32 bits of a sample's clock hold; the hello holds them. */
    @Test
    void aSilenceLongerThanTheClockIsToldByTheHello() {
        feed(sensor.hello());
        feed(sensor.next(10));
        sensor.skip(2 * 3600 * 200);
        double after = sensor.clockS();
        feed(sensor.next(40));
        assertThat(heard.rows).hasSize(10);

        feed(sensor.hello());
        feed(sensor.next(5));

        assertThat(heard.rows).hasSize(55);
        assertThat(heard.rows.get(10).timeS()).isCloseTo(after, within(EXACT_S));
        assertThat(decoder.counts()).isEqualTo(new WireCounts(55, 0, 0, 2 * 3600 * 200));
    }

    @Test
    void aSensorThatStartsAnewLosesNothingButWhatItDidNotSend() {
        feed(sensor.hello());
        feed(sensor.next(100));
        sensor.startAnew();
        feed(sensor.next(60));
        feed(sensor.hello());
        feed(sensor.next(40));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(200, 0, 0, 0));
        assertThat(heard.rows.get(100).timeS()).isZero();
        assertThat(heard.rows.get(199).timeS()).isCloseTo(0.495, within(EXACT_S));
    }

    @Test
    void aSensorThatNeverSaysHelloAgainIsHeardAllTheSame() {
        feed(sensor.hello());
        feed(sensor.next(1000));
        sensor.startAnew();
        feed(sensor.next(50));
        decoder.end();

        assertThat(decoder.counts()).isEqualTo(new WireCounts(1050, 0, 0, 0));
        assertThat(heard.rows.get(1000).timeS()).isZero();
    }

    /** A chance fit of the checksum gives a sample from nowhere; the stream goes on where it was. */
    @Test
    void aStraySampleIsLeftOut() {
        feed(sensor.hello());
        feed(sensor.next(10));
        feed(FrameWriter.sample(STRAP, 777, 3_000_000_000L, new short[6]));
        feed(sensor.next(10));

        assertThat(decoder.counts()).isEqualTo(new WireCounts(20, 1, 0, 0));
        assertTimesStep(1.0, 20);
    }

    @Test
    void aFrameSentTwiceGivesOneSample() {
        byte[] frame = sensor.next();
        feed(sensor.hello());
        feed(frame);
        feed(frame);
        feed(sensor.next(3));

        assertThat(heard.rows).hasSize(4);
        assertThat(decoder.counts().lost()).isZero();
    }

    @Test
    void halfAFrameAtTheStartAndAtTheEndIsHeldAgainstNobody() {
        byte[] frame = sensor.next();
        feed(Arrays.copyOfRange(frame, 9, frame.length));
        feed(sensor.hello());
        feed(sensor.next(5));
        feed(Arrays.copyOf(sensor.next(), 12));
        decoder.end();

        assertThat(decoder.counts()).isEqualTo(new WireCounts(5, 0, 0, 0));
    }

    @Test
    void aWholeFrameAtTheEndNeedsNoZeroBehindIt() {
        byte[] frame = sensor.next();
        feed(sensor.hello());
        feed(Arrays.copyOf(frame, frame.length - 1));
        assertThat(heard.rows).isEmpty();
        decoder.end();

        assertThat(heard.rows).hasSize(1);
    }

    @Test
    void bytesMayComeInAnyPieces() {
        byte[] bytes = Spoiler.join(sensor.hello(), sensor.next(30));
        for (int i = 0; i < bytes.length; i++) {
            decoder.accept(bytes, i, i + 1);
        }

        assertThat(decoder.counts()).isEqualTo(new WireCounts(30, 0, 0, 0));
    }

    @Test
    void sensorsMaySharePorts() {
        FakeSensor other = new FakeSensor(SensorId.UPPER_BACK, Place.UPPER_BACK, 500, 77_000_000);
        feed(sensor.hello());
        feed(other.hello());
        for (int i = 0; i < 100; i++) {
            feed(sensor.next());
            if (i % 10 == 3) {
                other.skip(1);
            }
            feed(other.next());
        }

        assertThat(heard.rows.stream().filter(row -> row.sensor() == STRAP)).hasSize(100);
        assertThat(heard.lost).isEqualTo(Map.of(SensorId.UPPER_BACK, 10L));
    }

    private void assertTimesStep(double fromS, int count) {
        for (int i = 0; i < count; i++) {
            assertThat(heard.rows.get(i).timeS()).isCloseTo(fromS + i * 0.005, within(EXACT_S));
        }
    }

    private void feed(byte[] bytes) {
        decoder.accept(bytes, 0, bytes.length);
    }

    private static byte[] stuffed(byte[] frame) {
        byte[] whole = Arrays.copyOf(frame, frame.length + 2);
        int crc = Crc16.of(frame, 0, frame.length);
        whole[frame.length] = (byte) (crc >> 8);
        whole[frame.length + 1] = (byte) crc;
        byte[] into = new byte[Cobs.longest(whole.length) + 1];
        return Arrays.copyOf(into, Cobs.encode(whole, whole.length, into) + 1);
    }
}

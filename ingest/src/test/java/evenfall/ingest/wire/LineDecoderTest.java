package evenfall.ingest.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.place.Place;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the lines: the wire's own specification; their checksums were computed bit by bit in another language. */
class LineDecoderTest {

    private static final double STANDARD_GRAVITY = 9.80665;
    private static final String UPRIGHT = "P,0,0,0,1,0,0,0*4640";
    private static final String TURNING = "P,5.25,0.0125,-0.5,0.998,-12.5,0.061,249.9*BA91";
    private static final String UPPER_BACK = "B,1234567.891,-15.999512,0,1e-3,2000,-0.06104,0*5FD4";

    private final List<Sample> samples = new ArrayList<>();
    private final LineDecoder decoder = new LineDecoder(
            (sensor, t, ax, ay, az, gx, gy, gz) -> samples.add(Sample.of(sensor, t, ax, ay, az, gx, gy, gz)));

    @Test
    void theWorkedLinesReadInSiUnits() {
        feed(UPRIGHT + "\n" + TURNING + "\n" + UPPER_BACK + "\n");

        assertThat(decoder.counts()).isEqualTo(new WireCounts(3, 0, 0, 0));
        assertThat(samples.get(0)).isEqualTo(new Sample(Place.PELVIS, 0, 0, 0, STANDARD_GRAVITY, 0, 0, 0));
        Sample turning = samples.get(1);
        assertThat(turning.timeS()).isCloseTo(0.00525, within(1e-12));
        assertThat(turning.ax()).isCloseTo(0.12258, within(1e-5));
        assertThat(turning.ay()).isCloseTo(-4.903325, within(1e-9));
        assertThat(turning.gx()).isCloseTo(-0.2181662, within(1e-7));
        assertThat(turning.gz()).isCloseTo(4.361578, within(1e-6));
        assertThat(samples.get(2).place()).isEqualTo(Place.UPPER_BACK);
        assertThat(samples.get(2).az()).isCloseTo(0.00980665, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r", "\n\n\r\n"})
    void anyLineEndWill(String end) {
        feed(UPRIGHT + end + TURNING + end);

        assertThat(decoder.counts()).isEqualTo(new WireCounts(2, 0, 0, 0));
    }

    @Test
    void linesWithoutChecksumAreTakenWhereThePortSendsNone() {
        feed("P,0,0,0,1,0,0,0\nP,5,0,0,1,0,0,0\nB,5, 0.5,+0.25,1.,-.5,0,0 \n");

        assertThat(decoder.counts()).isEqualTo(new WireCounts(3, 0, 0, 0));
        assertThat(samples.get(2).ax()).isEqualTo(0.5 * STANDARD_GRAVITY);
    }

    @Test
    void aLoneLineWithoutChecksumIsGivenAtTheEnd() {
        feed("P,0,0,0,1,0,0,0\n");
        assertThat(samples).isEmpty();

        decoder.end();

        assertThat(samples).hasSize(1);
    }

    @Test
    void aLineThatLostItsChecksumIsDamagedEvenWhenItIsTheFirst() {
        feed("P,0,0,0,1,0,0,0\n" + TURNING + "\nP,10,0,0,1,0,0,0\n");

        assertThat(samples).hasSize(1);
        assertThat(decoder.counts()).isEqualTo(new WireCounts(1, 2, 0, 2));
    }

    @Test
    void aWrongDigitIsDamaged() {
        feed(UPRIGHT + "\n" + TURNING.replace("-12.5", "-12.6") + "\n");

        assertThat(decoder.counts()).isEqualTo(new WireCounts(1, 1, 0, 1));
    }

    @Test
    void halfALineAtTheStartAndAtTheEndIsHeldAgainstNobody() {
        feed(TURNING.substring(9) + "\n" + UPRIGHT + "\n" + TURNING.substring(0, 20));
        decoder.end();

        assertThat(decoder.counts()).isEqualTo(new WireCounts(1, 0, 0, 0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hello",
                "Q,0,0,0,1,0,0,0",
                "P,0,0,0,1,0,0",
                "P,0,0,0,1,0,0,0,0",
                "P,0,0,0,1,0,0,nan",
                "P,0,0,0,1,0,0,1e9",
                "P,0,0,0,1001,0,0,0",
                "P,-5,0,0,1,0,0,0",
                "P,0,,0,1,0,0,0",
                "P,0,0x10,0,1,0,0,0",
                "P,0,1e,0,1,0,0,0",
                "P,0,0 0,0,1,0,0,0",
                "p,0,0,0,1,0,0,0",
                "P;0;0;0;1;0;0;0",
            })
    void whatIsNoSampleIsUnreadable(String line) {
        feed("P,0,0,0,1,0,0,0\nP,5,0,0,1,0,0,0\n" + line + "\n");

        int lost = line.startsWith("P,") ? 1 : 0;
        assertThat(decoder.counts()).isEqualTo(new WireCounts(2, 0, 1, lost));
    }

    @Test
    void remarksArePassedOver() {
        feed("# a remark\n" + UPRIGHT + "\n# another, with *ABCD\n" + TURNING + "\n");

        assertThat(decoder.counts()).isEqualTo(new WireCounts(2, 0, 0, 0));
    }

    @Test
    void bytesMayComeInAnyPieces() {
        byte[] bytes = (UPRIGHT + "\r\n" + TURNING + "\r\n").getBytes(StandardCharsets.US_ASCII);
        for (int i = 0; i < bytes.length; i++) {
            decoder.accept(bytes, i, i + 1);
        }

        assertThat(decoder.counts()).isEqualTo(new WireCounts(2, 0, 0, 0));
    }

    /** Source: the platform's own number reader. */
    @Test
    void numbersReadAsThePlatformReadsThem() {
        SplittableRandom random = new SplittableRandom(3);
        feed("P,0,0,0,1,0,0,0\nP,1,0,0,1,0,0,0\n");
        for (int i = 0; i < 20_000; i++) {
            double value = random.nextDouble(-900, 900);
            String text = switch (random.nextInt(3)) {
                case 0 -> Double.toString(value);
                case 1 -> String.format(Locale.ROOT, "%." + random.nextInt(12) + "f", value);
                default -> String.format(Locale.ROOT, "%." + random.nextInt(17) + "e", value);
            };
            samples.clear();
            feed("P,2,0,0,1,0,0," + text + "\n");

            assertThat(samples).as(text).hasSize(1);
            assertThat(samples.get(0).gz()).as(text).isEqualTo(Math.toRadians(Double.parseDouble(text)));
        }
    }

    @Test
    void whatIsWrittenIsReadBack() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 5000; i++) {
            Sample sample = Sample.random(random, i * 0.005);
            samples.clear();
            byte[] line = sample.line();
            decoder.accept(line, 0, line.length);

            Sample read = samples.get(0);
            assertThat(read.place()).isEqualTo(sample.place());
            assertThat(read.timeS()).isCloseTo(sample.timeS(), within(0.51e-6));
            assertThat(read.ax()).isCloseTo(sample.ax(), within(0.51e-6 * STANDARD_GRAVITY));
            assertThat(read.az()).isCloseTo(sample.az(), within(0.51e-6 * STANDARD_GRAVITY));
            assertThat(read.gy()).isCloseTo(sample.gy(), within(Math.toRadians(0.51e-5)));
        }
        assertThat(decoder.counts().bad()).isZero();
    }

    private void feed(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        decoder.accept(bytes, 0, bytes.length);
    }
}

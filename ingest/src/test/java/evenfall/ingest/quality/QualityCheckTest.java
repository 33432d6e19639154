package evenfall.ingest.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.recording.SensorStream;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each fault is put into a clean worn sensor by the test, which therefore knows where it is. */
class QualityCheckTest {

    private static final long SEED = 7;
    private static final double STANDARD_GRAVITY = 9.80665;

    @ParameterizedTest
    @ValueSource(doubles = {50, 100, 200, 416, 800, 1600})
    void aCleanSensorShowsNothing(double rate) {
        for (long seed = 0; seed < 6; seed++) {
            assertThat(QualityCheck.check(new WornSensor(rate, 60, seed).stream()))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 100, 200, 416, 800, 1600})
    void aStuckAxisIsNamedWithItsTime(double rate) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int column = 0; column < 6; column++) {
            double from = random.nextDouble(1, 40);
            Finding finding = only(new WornSensor(rate, 60, column).hold(column, from, from + 3).stream());

            assertThat(finding.code()).isEqualTo(FindingCode.STUCK_AXIS);
            assertThat(finding.atS()).as("seed %d", SEED).isCloseTo(from, within(2.5 / rate));
            assertThat(finding.message())
                    .startsWith("Axis " + "xyzxyz".charAt(column) + " of the "
                            + (column < 3 ? "accelerometer" : "gyroscope"));
        }
    }

    @Test
    void anAxisThatSticksAgainAndAgainIsOneFinding() {
        WornSensor sensor = new WornSensor(200, 120, SEED);
        for (int k = 0; k < 10; k++) {
            sensor.hold(1, 5 + 11 * k, 7 + 11 * k);
        }

        Finding finding = only(sensor.stream());

        assertThat(finding.code()).isEqualTo(FindingCode.STUCK_AXIS);
        assertThat(finding.message()).contains("10 times").contains("first from 5.0");
    }

    @Test
    void aFrozenSensorIsDeadAndNotSixStuckAxes() {
        WornSensor sensor = new WornSensor(100, 60, SEED);
        for (int c = 0; c < 6; c++) {
            sensor.hold(c, 30, 35);
        }

        Finding finding = only(sensor.stream());

        assertThat(finding.code()).isEqualTo(FindingCode.DEAD_SENSOR);
        assertThat(finding.atS()).isCloseTo(30, within(0.02));
        assertThat(finding.message()).startsWith("The sensor gave one and the same sample");
    }

    /** Swings about y for a minute without rest; the bias lies along x, across gravity most of the time. */
    private static SensorStream swinging(double biasDegrees, double gain) {
        SensorStream.Builder builder = new SensorStream.Builder();
        SplittableRandom random = new SplittableRandom(SEED);
        double pace = 2 * Math.PI * 0.8;
        for (int i = 0; i < 60 * 200; i++) {
            double t = i / 200.0;
            double tilt = 0.4 * Math.sin(pace * t);
            double noise = 0.05 * random.nextGaussian();
            builder.add(
                    t,
                    -STANDARD_GRAVITY * Math.sin(tilt) + noise,
                    4 * Math.sin(2 * pace * t) + noise,
                    STANDARD_GRAVITY * Math.cos(tilt) + 0.5 * Math.sin(2 * pace * t + 1),
                    gain * (Math.toRadians(biasDegrees) + 0.3 * Math.sin(2 * pace * t)),
                    gain * 0.4 * pace * Math.cos(pace * t),
                    gain * 0.002 * random.nextGaussian());
        }
        return builder.build();
    }

    @Test
    void aLargeBiasShowsInASensorThatNeverRests() {
        assertThat(QualityCheck.check(swinging(2, 1))).isEmpty();
        assertThat(only(swinging(10, 1)).code()).isEqualTo(FindingCode.GYRO_BIAS);
        assertThat(only(swinging(-10, 1)).code()).isEqualTo(FindingCode.GYRO_BIAS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {180 / Math.PI, Math.PI / 180})
    void degreesAndRadiansMixedUpShowInASensorThatNeverRests(double gain) {
        assertThat(only(swinging(0, gain)).code()).isEqualTo(FindingCode.UNITS);
    }

    @Test
    void aGyroscopeThatOnlySaysNothingIsDead() {
        Finding finding = only(new WornSensor(200, 60, SEED).scale(3, 6, 0).stream());

        assertThat(finding.code()).isEqualTo(FindingCode.DEAD_SENSOR);
        assertThat(finding.message()).contains("gyroscope").contains("throughout");
    }

    @Test
    void aGyroscopeSilencedAtRestIsNotDead() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        for (int c = 3; c < 6; c++) {
            for (int i = 0; i < sensor.time.length; i++) {
                sensor.columns[c][i] = sensor.time[i] % 20 < 7.9 ? 0 : sensor.columns[c][i];
            }
        }

        assertThat(QualityCheck.check(sensor.stream())).isEmpty();
    }

    @Test
    void coarseNumbersAtRestAreNotStuck() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        for (int c = 0; c < 6; c++) {
            double step = c < 3 ? 0.06 : 0.004;
            for (int i = 0; i < sensor.time.length; i++) {
                sensor.columns[c][i] = Math.rint(sensor.columns[c][i] / step) * step;
            }
        }

        assertThat(QualityCheck.check(sensor.stream())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "9.80665, m/s² taken for g",
        "0.101971621, g taken for m/s²",
        "1000, mg taken for g",
        "0.001, g taken for mg",
        "101.971621, mg taken for m/s²",
        "2048, raw counts (about 2048 to 1 g)",
        "16384, raw counts (about 16384 to 1 g)",
        "2, 2 times too large",
        "0.5, 2 times too small",
        "3, multiply the scale in the layout file by 0.33",
    })
    void wrongUnitsAreNamedByTheirFactor(double factor, String words) {
        Finding finding = QualityCheck.check(new WornSensor(200, 60, SEED).scale(0, 3, factor).stream())
                .get(0);

        assertThat(finding.code()).isEqualTo(FindingCode.UNITS);
        assertThat(finding.message()).contains(words);
        assertThat(finding.atS()).isLessThan(1);
    }

    @ParameterizedTest
    @CsvSource({"57.29578, deg/s taken for rad/s", "0.01745329, rad/s taken for deg/s"})
    void degreesAndRadiansMixedUpAreTold(double factor, String words) {
        List<Finding> findings = QualityCheck.check(new WornSensor(200, 60, SEED).scale(3, 6, factor).stream());

        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).code()).isEqualTo(FindingCode.UNITS);
        assertThat(findings.get(0).message()).contains(words);
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 200, 1600})
    void aLargeGyroscopeBiasIsTold(double rate) {
        Finding finding = only(new WornSensor(rate, 60, SEED).add(4, Math.toRadians(-7)).stream());

        assertThat(finding.code()).isEqualTo(FindingCode.GYRO_BIAS);
        assertThat(finding.message()).contains("7.0 deg/s").contains("y -7.0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 200, 1600})
    void gapsAndLostSamplesAreCounted(double rate) {
        WornSensor sensor = new WornSensor(rate, 60, SEED);
        boolean[] lost = new boolean[sensor.time.length];
        SplittableRandom random = new SplittableRandom(SEED);
        int count = 0;
        for (int k = 0; k < 12; k++) {
            int i = sensor.index(2) + 2 * random.nextInt(sensor.index(20));
            count += lost[i] ? 0 : 1;
            lost[i] = true;
        }
        int gap = (int) (0.4 * rate);
        for (int i = 0; i < gap; i++) {
            lost[sensor.index(50) + i] = true;
        }

        List<Finding> findings = QualityCheck.check(sensor.streamWithout(lost));

        assertThat(findings)
                .as("seed %d", SEED)
                .extracting(Finding::code)
                .containsExactlyInAnyOrder(FindingCode.LOST_SAMPLES, FindingCode.GAP);
        Finding all = findings.get(0);
        assertThat(all.message()).startsWith(count + gap + " samples are missing");
        assertThat(findings.get(1).atS()).isCloseTo(50, within(2 / rate));
        assertThat(findings.get(1).message()).contains("(" + gap + " samples missing)");
    }

    @Test
    void manySingleLostSamplesAreCountedAndAreNeitherJitterNorAnotherRate() {
        WornSensor sensor = new WornSensor(400, 60, SEED);
        boolean[] lost = new boolean[sensor.time.length];
        int count = 0;
        for (int i = 10; i < lost.length - 10; i += 8) {
            lost[i] = true;
            count++;
        }

        Finding finding = only(sensor.streamWithout(lost));

        assertThat(finding.code()).isEqualTo(FindingCode.LOST_SAMPLES);
        assertThat(finding.message()).startsWith(count + " samples are missing in all (12 %)");
    }

    @Test
    void hundredsOfGapsDoNotFlood() {
        WornSensor sensor = new WornSensor(200, 120, SEED);
        boolean[] lost = new boolean[sensor.time.length];
        for (int k = 0; k < 300; k++) {
            for (int i = 0; i < 4 + k % 5; i++) {
                lost[100 + 70 * k + i] = true;
            }
        }

        List<Finding> findings = QualityCheck.check(sensor.streamWithout(lost));

        assertThat(findings).hasSizeLessThanOrEqualTo(12);
        assertThat(findings).anyMatch(finding -> finding.message().startsWith("291 more gaps"));
    }

    @Test
    void clippingSaysHowManyWhereAndOnWhichAxis() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        sensor.columns[2][4000] = -300;
        sensor.columns[2][4001] = -300;
        sensor.columns[0][9000] = 300;
        sensor.limit(16 * STANDARD_GRAVITY);

        Finding finding = only(sensor.stream());

        assertThat(finding.code()).isEqualTo(FindingCode.CLIPPING);
        assertThat(finding.atS()).isCloseTo(20, within(0.01));
        assertThat(finding.message())
                .contains("3 samples")
                .contains("axes x and z")
                .contains("20.00 and 45.00 s");
    }

    @Test
    void aRateThatHalvesOnTheWayIsTold() {
        WornSensor sensor = new WornSensor(200, 120, SEED);
        boolean[] lost = new boolean[sensor.time.length];
        for (int i = sensor.index(90); i < lost.length; i += 2) {
            lost[i] = true;
        }

        List<Finding> findings = QualityCheck.check(sensor.streamWithout(lost));

        Finding rate = findings.stream()
                .filter(finding -> finding.code() == FindingCode.RATE)
                .findFirst()
                .orElseThrow();
        assertThat(rate.atS()).isBetween(84.0, 96.0);
        assertThat(rate.message()).contains("200.0 Hz");
    }

    @Test
    void aSlowSensorIsTold() {
        assertThat(only(new WornSensor(25, 60, SEED).stream()).code()).isEqualTo(FindingCode.RATE);
    }

    @Test
    void scatteredStampsAreJitter() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < sensor.time.length; i++) {
            sensor.time[i] = (i + random.nextDouble(-0.45, 0.45)) / 200;
        }

        assertThat(only(sensor.stream()).code()).isEqualTo(FindingCode.JITTER);
    }

    @Test
    void samplesThatCarryThePacketsTimeAreRepeatedTimeAndNotGaps() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        for (int i = 0; i < sensor.time.length; i++) {
            int packet = i / 5;
            sensor.time[i] = packet * 0.025;
        }

        Finding finding = only(sensor.stream());

        assertThat(finding.code()).isEqualTo(FindingCode.REPEATED_TIME);
        assertThat(finding.message()).contains("9600 samples");
    }

    @Test
    void packetsOfUnlikeSizesLeaveNoGapsEither() {
        WornSensor sensor = new WornSensor(200, 60, SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        int end = 0;
        for (int i = 0; i < sensor.time.length; i++) {
            end = i == end ? end + random.nextInt(1, 9) : end;
            sensor.time[i] = end / 200.0;
        }

        assertThat(only(sensor.stream()).code()).isEqualTo(FindingCode.REPEATED_TIME);
    }

    @Test
    void aSingleSampleShowsNothing() {
        SensorStream stream =
                new SensorStream.Builder().add(0, 0, 0, 9.8, 0, 0, 0).build();

        assertThat(QualityCheck.check(stream)).isEmpty();
    }

    private static Finding only(SensorStream stream) {
        List<Finding> findings = QualityCheck.check(stream);
        assertThat(findings).hasSize(1);
        return findings.get(0);
    }
}

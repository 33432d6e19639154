package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What rest shows: that the accelerometer reads 1 g, and what the gyroscope reads when nothing turns.
 *
 * <p>A second counts as rest when the acceleration scatters by less than {@value #SCATTER} of its own size, whatever
 * its unit, and for the gyroscope when the turn rate scatters by less than 2 deg/s besides.
 */
final class RestCheck {

    private static final Words WORDS = Words.beside(RestCheck.class);

    private static final double WINDOW_S = 1;
    private static final double SCATTER = 0.02;
    private static final double STILL_TURN_RATE = Math.toRadians(2);

    /** Cheap sensors at rest read 0.84 to 1.15 g in the open recordings of people; beyond this it is another unit. */
    private static final double REST_LOW = 0.8;

    private static final double REST_HIGH = 1.25;

    /** Without rest the middle of all readings lies within these of 1 g, jogging included. */
    private static final double MOVING_LOW = 0.6;

    private static final double MOVING_HIGH = 1.7;

    /** Cheap sensors are within about 4 deg/s in the open recordings; more is a sensor that wants setting to zero. */
    private static final double LARGE_BIAS = Math.toRadians(4.5);

    /** The same without rest, seen less surely: the open recordings of people at work reach 5.3 deg/s. */
    private static final double LARGE_MOVING_BIAS = Math.toRadians(6);

    private static final int FEWEST_SECONDS = 10;
    private static final int FEWEST_WINDOWS = 2;
    private static final int MOST_WINDOWS = 4096;

    private RestCheck() {}

    static List<Finding> check(SensorStream stream) {
        List<Finding> findings = new ArrayList<>();
        if (stream.rateHz() == 0 || stream.durationS() < WINDOW_S) {
            return findings;
        }
        Windows still = new Windows();
        Windows quiet = new Windows();
        Windows every = new Windows();
        int length = (int) Math.max(10, Math.round(WINDOW_S * stream.rateHz()));
        float[] scratch = new float[length];
        int most = Math.max(1, (stream.size() - length) / MOST_WINDOWS);
        int stride = Math.max(length / 2, most);
        for (int from = 0; from + length <= stream.size(); from += stride) {
            if (stream.time(from + length - 1) - stream.time(from) > 1.2 * WINDOW_S) {
                continue;
            }
            Window window = Window.of(stream, from, scratch);
            every.add(window);
            if (window.accelerationScatter() < SCATTER * window.acceleration()) {
                quiet.add(window);
                if (window.turnRateScatter() < STILL_TURN_RATE) {
                    still.add(window);
                }
            }
        }
        if (quiet.size() >= FEWEST_WINDOWS) {
            units(quiet, true, findings);
        } else if (every.size() > 0) {
            units(every, false, findings);
        }
        if (still.size() >= FEWEST_WINDOWS) {
            bias(still, findings);
        } else {
            bias(stream, scratch, findings);
        }
        return findings;
    }

    private static void units(Windows windows, boolean rest, List<Finding> findings) {
        double ratio = windows.median(Window::acceleration) / Gravity.STANDARD;
        if (ratio > (rest ? REST_LOW : MOVING_LOW) && ratio < (rest ? REST_HIGH : MOVING_HIGH)) {
            return;
        }
        findings.add(new Finding(
                FindingCode.UNITS,
                Severity.ERROR,
                WORDS.say(
                        "rest.acceleration",
                        WORDS.say(rest ? "rest.still" : "rest.whole"),
                        significant(ratio),
                        Wording.moment(windows.first().atS()),
                        UnitGuess.words(ratio)),
                null,
                windows.first().atS()));
    }

    private static void bias(Windows still, List<Finding> findings) {
        double x = still.median(Window::gx);
        double y = still.median(Window::gy);
        double z = still.median(Window::gz);
        double size = Math.sqrt(x * x + y * y + z * z);
        if (size <= LARGE_BIAS) {
            return;
        }
        findings.add(new Finding(
                FindingCode.GYRO_BIAS,
                Severity.WARNING,
                WORDS.say(
                        "rest.gyroscope",
                        Digits.fixed(Math.toDegrees(size), 1),
                        Digits.fixed(Math.toDegrees(x), 1),
                        Digits.fixed(Math.toDegrees(y), 1),
                        Digits.fixed(Math.toDegrees(z), 1),
                        Wording.moment(still.first().atS())),
                null,
                still.first().atS()));
    }

    /**
     * The bias of a sensor that never rests. On the whole gravity turns in a worn sensor by no more than from its first to
     * its last direction, so du/dt = -(omega - bias) x u, averaged over all seconds, leaves the part of the bias across
     * gravity.
     */
    private static void bias(SensorStream stream, float[] scratch, List<Finding> findings) {
        int length = scratch.length;
        int seconds = stream.size() / length;
        if (seconds < FEWEST_SECONDS || !stream.gaps().isEmpty()) {
            return;
        }
        double[] first = new double[3];
        double[] mean = new double[6];
        double[] up = new double[3];
        double[] left = new double[3];
        for (int k = 0; k < seconds; k++) {
            if (Means.of(stream, k * length, scratch, mean) == 0) {
                return;
            }
            for (int c = 0; c < 3; c++) {
                int d = (c + 1) % 3;
                int e = (c + 2) % 3;
                first[c] = k == 0 ? mean[c] : first[c];
                up[c] += mean[c] / seconds;
                left[c] += (mean[3 + d] * mean[e] - mean[3 + e] * mean[d]) / seconds;
            }
        }
        double squares = 0;
        for (int c = 0; c < 3; c++) {
            left[c] += (mean[c] - first[c]) / (seconds - 1.0);
        }
        for (int c = 0; c < 3; c++) {
            double across = up[(c + 1) % 3] * left[(c + 2) % 3] - up[(c + 2) % 3] * left[(c + 1) % 3];
            squares += across * across;
        }
        double size = Math.sqrt(squares);
        if (size > LARGE_MOVING_BIAS) {
            findings.add(new Finding(
                    FindingCode.GYRO_BIAS,
                    Severity.WARNING,
                    WORDS.say("rest.offset", Digits.fixed(Math.toDegrees(size), 0)),
                    null,
                    0.0));
        }
    }

    private static String significant(double ratio) {
        return Digits.fixed(ratio, ratio >= 100 ? 0 : ratio >= 10 ? 1 : ratio >= 0.1 ? 2 : 5);
    }

    private static final class Windows {

        private final List<Window> windows = new ArrayList<>();

        void add(Window window) {
            windows.add(window);
        }

        int size() {
            return windows.size();
        }

        Window first() {
            return windows.get(0);
        }

        double median(ToDoubleFunction<Window> value) {
            double[] sorted = windows.stream().mapToDouble(value).sorted().toArray();
            return sorted[sorted.length / 2];
        }
    }
}

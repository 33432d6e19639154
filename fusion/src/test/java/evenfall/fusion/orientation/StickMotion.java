package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.Arrays;
import java.util.Random;

/**
 * A rigid stick turned and shaken in a hand, with rests between, as a cheap sensor on it reads it. Turn rates and the hand's
 * way are sums of sines with an envelope, so nothing about them is as any filter takes it to be. The truth is integrated at some
 * 10 kHz; a reading is the mean over the interval that ends at its sample.
 */
final class StickMotion {

    private static final double SECONDS = 60;
    private static final double REST = 4;
    private static final double RAMP = 0.4;
    private static final int SINES = 6;

    private final Random random;
    private final double rateHz;
    private final double fullScale;
    private final double peakRate;
    private final double peakForce;
    private final int steps;
    private final int fine;
    private final double dt;
    private final int samples;

    /** Amplitude, frequency, phase of each sine of each axis: turn rate, then the hand's way. */
    private final double[][] sines = new double[6][3 * SINES];

    private final double[] arm = new double[3];
    private final double[] bouts = new double[64];
    private int bout;

    /** World from sensor at each sample. */
    private final Quaternion[] truth;

    /** Whether the stick moved at each sample. */
    private final boolean[] moving;

    private final double[] readings;

    /**
     * A stick.
     *
     * @param fullScale what its gyroscope reads at most, rad/s
     * @param peakRate what it turns at most about an axis, as a multiple of that
     * @param peakForce greatest specific force, m/s²
     */
    StickMotion(long seed, double rateHz, double fullScale, double peakRate, double peakForce) {
        this.random = new Random(seed);
        this.rateHz = rateHz;
        this.fullScale = fullScale;
        this.peakRate = peakRate * fullScale;
        this.peakForce = peakForce;
        this.steps = (int) Math.ceil(10_000 / rateHz);
        this.dt = 1 / (rateHz * steps);
        this.samples = (int) (SECONDS * rateHz);
        this.fine = samples * steps;
        this.truth = new Quaternion[samples];
        this.moving = new boolean[samples];
        this.readings = new double[6 * samples];
        draw();
        run();
    }

    /** One of a series (seeds 0, 1, 2 and so on) over rates, full scales, turn rates and forces. */
    static StickMotion ofSeed(int seed) {
        double[] rates = {200, 285.7, 400, 250};
        double[] scales = {250, 500, 1000};
        Random r = new Random(0x9E3779B97F4A7C15L * (seed + 1));
        return new StickMotion(
                seed,
                rates[r.nextInt(4)],
                Math.toRadians(scales[r.nextInt(3)]),
                1.2 + 1.3 * r.nextDouble(),
                Gravity.STANDARD * (2.5 + 9.5 * r.nextDouble()));
    }

    private void draw() {
        int main = random.nextInt(3);
        for (int axis = 0; axis < 6; axis++) {
            double share = axis >= 3 ? 1 : axis == main ? 1 : 0.1 + 0.5 * random.nextDouble();
            for (int k = 0; k < SINES; k++) {
                double f = 0.2 + (axis < 3 ? 3.3 : 2.8) * random.nextDouble();
                sines[axis][3 * k] = share * random.nextGaussian() / (axis < 3 ? 1 : f * f);
                sines[axis][3 * k + 1] = 2 * Math.PI * f;
                sines[axis][3 * k + 2] = 2 * Math.PI * random.nextDouble();
            }
        }
        for (int i = 0; i < 3; i++) {
            arm[i] = random.nextGaussian();
        }
        double t = REST;
        while (bout + 2 < bouts.length && t < SECONDS - REST - 3) {
            double end = Math.min(SECONDS - REST, t + 4 + 8 * random.nextDouble());
            bouts[bout++] = t;
            bouts[bout++] = end;
            t = end + 0.5 + 3 * random.nextDouble();
        }
    }

    /** Envelope: 0 at rest, 1 in a bout, with two derivatives that are 0 at both ends of each ramp. */
    private double envelope(double t) {
        for (int i = 0; i < bout; i += 2) {
            if (t > bouts[i] && t < bouts[i + 1]) {
                double u = Math.min(1, Math.min(t - bouts[i], bouts[i + 1] - t) / RAMP);
                return u * u * u * (10 - 15 * u + 6 * u * u);
            }
        }
        return 0;
    }

    private double at(int axis, double t) {
        double e = envelope(t);
        if (e == 0) {
            return 0;
        }
        double sum = 0;
        for (int k = 0; k < SINES; k++) {
            sum += sines[axis][3 * k] * Math.sin(sines[axis][3 * k + 1] * t + sines[axis][3 * k + 2]);
        }
        return e * sum;
    }

    private void scale(int from, double factor) {
        for (int axis = from; axis < from + 3; axis++) {
            for (int k = 0; k < SINES; k++) {
                sines[axis][3 * k] *= factor;
            }
        }
    }

    private void hand(double t, double[] into) {
        double h = 1e-3;
        for (int i = 0; i < 3; i++) {
            into[i] = (at(3 + i, t - h) - 2 * at(3 + i, t) + at(3 + i, t + h)) / (h * h);
        }
    }

    /** Acceleration of the sensor about the hand, sensor axes. */
    private void lever(double t, double[] w, double[] into) {
        double h = 1e-3;
        double[] d = new double[3];
        for (int i = 0; i < 3; i++) {
            w[i] = at(i, t);
            d[i] = (at(i, t + h) - at(i, t - h)) / (2 * h);
        }
        double wr = w[0] * arm[0] + w[1] * arm[1] + w[2] * arm[2];
        double ww = w[0] * w[0] + w[1] * w[1] + w[2] * w[2];
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            into[i] = d[j] * arm[k] - d[k] * arm[j] + w[i] * wr - arm[i] * ww;
        }
    }

    private static double size(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }

    private void run() {
        double top = 0;
        for (double t = 0; t < SECONDS; t += 1e-3) {
            top = Math.max(top, Math.max(Math.abs(at(0, t)), Math.max(Math.abs(at(1, t)), Math.abs(at(2, t)))));
        }
        scale(0, peakRate / top);
        double[] w = new double[3];
        double[] a = new double[3];
        double topLever = 0;
        double topHand = 0;
        for (double t = 0; t < SECONDS; t += 2e-3) {
            lever(t, w, a);
            topLever = Math.max(topLever, size(a));
            hand(t, a);
            topHand = Math.max(topHand, size(a));
        }
        double share = 0.3 + 0.5 * random.nextDouble();
        double beside = peakForce - Gravity.STANDARD;
        for (int i = 0; i < 3; i++) {
            arm[i] *= share * beside / topLever;
        }
        scale(3, (1 - share) * beside / topHand);
        record();
    }

    private void record() {
        double[] bias = new double[6];
        double[] scale = new double[18];
        double[] noise = {
            Math.toRadians(0.01) * Math.sqrt(rateHz / 2), 0.0015 * Math.sqrt(rateHz / 2),
        };
        for (int i = 0; i < 6; i++) {
            bias[i] = random.nextGaussian() * (i < 3 ? Math.toRadians(0.4) : 0.04);
            for (int k = 0; k < 3; k++) {
                scale[3 * i + k] =
                        i % 3 == k ? 1 + 0.005 * random.nextGaussian() : i < 3 ? 0.003 * random.nextGaussian() : 0;
            }
        }
        Attitude q = new Attitude();
        q.setFromForce(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        double[] w = new double[3];
        double[] a = new double[3];
        double[] hand = new double[3];
        double[] r = new double[9];
        double[] sum = new double[6];
        for (int n = 0; n < fine; n++) {
            double t = (n + 0.5) * dt;
            lever(t, w, a);
            hand(t, hand);
            hand[2] += Gravity.STANDARD;
            q.turnByBodyRate(w[0], w[1], w[2], dt / 2);
            q.toMatrix(r);
            for (int i = 0; i < 3; i++) {
                sum[i] += w[i] / steps;
                sum[3 + i] += (a[i] + r[i] * hand[0] + r[3 + i] * hand[1] + r[6 + i] * hand[2]) / steps;
            }
            q.turnByBodyRate(w[0], w[1], w[2], dt / 2);
            if ((n + 1) % steps == 0) {
                int row = n / steps;
                for (int i = 0; i < 6; i++) {
                    int b = i < 3 ? 0 : 3;
                    readings[6 * row + i] = scale[3 * i] * sum[b]
                            + scale[3 * i + 1] * sum[b + 1]
                            + scale[3 * i + 2] * sum[b + 2]
                            + bias[i]
                            + noise[i / 3] * random.nextGaussian();
                }
                truth[row] = new Quaternion(q.w, q.x, q.y, q.z);
                moving[row] = envelope(t) > 0;
                Arrays.fill(sum, 0);
            }
        }
    }

    /** What the sensor reads, by a gyroscope that reads no more than its full scale or one without. */
    SensorStream stream(boolean clips) {
        double limit = clips ? fullScale : Double.POSITIVE_INFINITY;
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < samples; i++) {
            double[] g = new double[3];
            boolean clipped = false;
            for (int k = 0; k < 3; k++) {
                g[k] = Math.max(-limit, Math.min(limit, readings[6 * i + k]));
                clipped |= Math.abs(g[k]) >= limit;
            }
            builder.add(
                    (i + 1) / rateHz, readings[6 * i + 3], readings[6 * i + 4], readings[6 * i + 5], g[0], g[1], g[2]);
            if (clipped) {
                builder.clipTurnRate(i);
            }
        }
        return builder.build();
    }

    /** Root mean square inclination error over what moved, deg. */
    double error(boolean clips, FilterKind kind) {
        OrientationTrack track = OrientationEstimator.estimate(stream(clips), kind);
        double sum = 0;
        int count = 0;
        for (int i = 0; i < samples; i++) {
            if (moving[i]) {
                double e = OrientationError.of(track.at(i), truth[i]).inclinationDegrees();
                sum += e * e;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }
}

package evenfall.fusion.orientation;

import evenfall.fusion.filtering.Biquad;
import evenfall.fusion.filtering.Butterworth;
import evenfall.ingest.recording.SensorStream;

/**
 * The low-pass-in-inertial-frame filter with sight of what comes: the gyroscope's bias from a run forward and a run
 * backward, weighed by their covariances, and a low-pass on specific force without delay.
 *
 * <p>Source: Laidig and Seel 2023, offline variant. What changes slowly, the bias and the specific force after its
 * first low-pass, is kept at {@value #KEPT_HZ} Hz and read in between on a straight line, so that a session of ten hours
 * fits into memory beside its samples.
 */
final class TwoPassEstimator {

    private static final double KEPT_HZ = 20;

    private final SensorStream stream;
    private final InertialParams params;
    private final double rateHz;
    private final int every;
    private final int kept;

    TwoPassEstimator(SensorStream stream, double rateHz, InertialParams params) {
        this.stream = stream;
        this.rateHz = rateHz;
        this.params = params;
        this.every = Math.max(1, (int) (rateHz / KEPT_HZ));
        this.kept = (stream.size() - 1) / every + 2;
    }

    OrientationTrack estimate() {
        float[][] bias = biasBothWays();
        float[][] force = forceBothWays(bias);
        return tilted(bias, force);
    }

    /** Bias (3 columns) at every {@link #every}th sample, rad/s, weighed from both directions. */
    private float[][] biasBothWays() {
        float[][] forward = new float[9][kept];
        InertialFilter filter = new InertialFilter(params, rateHz);
        SampleClock clock = new SampleClock(1 / rateHz);
        for (int i = 0; i < stream.size(); i++) {
            double seconds = clock.next(stream.time(i));
            if (clock.missing() > 0) {
                filter.gap(clock.missing());
            }
            step(filter, i, seconds, 1);
            if (i % every == 0) {
                store(filter.bias(), forward, i / every);
            }
        }
        store(filter.bias(), forward, kept - 1);
        filter = new InertialFilter(params, rateHz);
        int gap = stream.gaps().size() - 1;
        for (int i = stream.size() - 1; i >= 0; i--) {
            if (gap >= 0 && stream.gaps().get(gap).before() == i) {
                filter.gap(stream.gaps().get(gap).lengthS());
                gap--;
            }
            step(filter, i, 1 / rateHz, -1);
            if (i % every == 0) {
                BiasPair.weigh(forward, i / every, filter.bias());
            }
        }
        BiasPair.weigh(forward, kept - 1, new InertialFilter(params, rateHz).bias());
        return new float[][] {forward[0], forward[1], forward[2]};
    }

    private void step(InertialFilter filter, int i, double seconds, int sense) {
        filter.step(
                seconds,
                stream.ax(i),
                stream.ay(i),
                stream.az(i),
                sense * stream.gx(i),
                sense * stream.gy(i),
                sense * stream.gz(i),
                SampleTrust.of(stream.accelerationClipped(i), stream.turnRateClipped(i)));
    }

    private static void store(BiasFilter b, float[][] into, int k) {
        into[0][k] = (float) b.x;
        into[1][k] = (float) b.y;
        into[2][k] = (float) b.z;
        into[3][k] = (float) b.pxx;
        into[4][k] = (float) b.pxy;
        into[5][k] = (float) b.pxz;
        into[6][k] = (float) b.pyy;
        into[7][k] = (float) b.pyz;
        into[8][k] = (float) b.pzz;
    }

    /** Specific force in the drifting frame after a low-pass forward and one backward, m/s². */
    private float[][] forceBothWays(float[][] bias) {
        float[][] force = new float[3][kept];
        InertialCoefficients c = InertialCoefficients.of(params, rateHz);
        SteadyLowPass forward = new SteadyLowPass(c.acceleration());
        SampleClock clock = new SampleClock(1 / rateHz);
        Attitude turned = new Attitude();
        double[] f = new double[3];
        for (int i = 0; i < stream.size(); i++) {
            turn(turned, bias, i, clock.next(stream.time(i)));
            double ax = stream.ax(i);
            double ay = stream.ay(i);
            double az = stream.az(i);
            f[0] = turned.worldX(ax, ay, az);
            f[1] = turned.worldY(ax, ay, az);
            f[2] = turned.worldZ(ax, ay, az);
            forward.filter(f);
            if (i % every == 0) {
                put(f, force, i / every);
            }
        }
        put(f, force, kept - 1);
        Biquad slow = Butterworth.ofTimeConstant(params.accelerationTime(), rateHz / every);
        SteadyLowPass backward = new SteadyLowPass(slow);
        for (int k = kept - 1; k >= 0; k--) {
            for (int a = 0; a < 3; a++) {
                f[a] = force[a][k];
            }
            backward.filter(f);
            put(f, force, k);
        }
        return force;
    }

    private OrientationTrack tilted(float[][] bias, float[][] force) {
        OrientationTrack.Builder track = new OrientationTrack.Builder(stream.size());
        SampleClock clock = new SampleClock(1 / rateHz);
        Attitude turned = new Attitude();
        Attitude tilt = new Attitude();
        Attitude out = new Attitude();
        for (int i = 0; i < stream.size(); i++) {
            turn(turned, bias, i, clock.next(stream.time(i)));
            double fx = between(force[0], i);
            double fy = between(force[1], i);
            double fz = between(force[2], i);
            double ux = tilt.worldX(fx, fy, fz);
            double uy = tilt.worldY(fx, fy, fz);
            double uz = tilt.worldZ(fx, fy, fz);
            double norm = Math.sqrt(ux * ux + uy * uy + uz * uz);
            if (norm > 0) {
                tilt.tiltUp(ux / norm, uy / norm, uz / norm);
            }
            out.setProduct(tilt, turned);
            track.add(out.w, out.x, out.y, out.z);
        }
        return track.build();
    }

    private void turn(Attitude turned, float[][] bias, int i, double seconds) {
        turned.turnByBodyRate(
                stream.gx(i) - between(bias[0], i),
                stream.gy(i) - between(bias[1], i),
                stream.gz(i) - between(bias[2], i),
                seconds);
    }

    private double between(float[] column, int i) {
        int k = i / every;
        double part = (i - k * every) / (double) every;
        return column[k] + part * (column[k + 1] - column[k]);
    }

    private static void put(double[] f, float[][] into, int k) {
        for (int a = 0; a < 3; a++) {
            into[a][k] = (float) f[a];
        }
    }
}

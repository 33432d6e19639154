package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;

/**
 * The low-pass-in-inertial-frame filter with sight of what comes: the gyroscope's bias from a run forward and a run
 * backward, weighed by their covariances, and a low-pass on specific force without delay.
 *
 * <p>Source: Laidig and Seel 2023, offline variant. What changes slowly, the bias and the low-passed specific force, is
 * kept at about {@value #KEPT_HZ} Hz (the force as means of blocks) and read in between on a straight line, so that a
 * session of ten hours fits into memory beside its samples. Added to it: {@link FrameRepair}.
 */
final class TwoPassEstimator {

    private static final double KEPT_HZ = 20;

    private final SensorStream stream;
    private final InertialParams params;
    private final double rateHz;
    private final int every;
    private final int blocks;
    private final int kept;

    TwoPassEstimator(SensorStream stream, double rateHz, InertialParams params) {
        this.stream = stream;
        this.rateHz = rateHz;
        this.params = params;
        this.every = Math.max(1, (int) (rateHz / KEPT_HZ));
        this.blocks = (stream.size() - 1) / every + 1;
        this.kept = blocks + 1;
    }

    OrientationTrack estimate() {
        float[][] bias = biasBothWays();
        float[] doubt = new float[blocks];
        float[][] force = forceOfBlocks(bias, doubt);
        FrameRepair repair = FrameRepair.of(force, doubt, every / rateHz);
        lowPassBothWays(force);
        return tilted(bias, force, repair);
    }

    /** Bias (3 columns) at every {@link #every}th sample, rad/s, weighed from both directions. */
    private float[][] biasBothWays() {
        float[][] forward = new float[9][kept];
        InertialFilter filter = new InertialFilter(params, rateHz);
        SampleFeed feed = SampleFeed.forward(rateHz);
        for (int i = 0; i < stream.size(); i++) {
            step(filter, feed, i);
            if (i % every == 0) {
                store(filter.bias(), forward, i / every);
            }
        }
        store(filter.bias(), forward, kept - 1);
        filter = new InertialFilter(params, rateHz);
        BiasPair.weigh(forward, kept - 1, filter.bias());
        feed = SampleFeed.backward(rateHz);
        for (int i = stream.size() - 1; i >= 0; i--) {
            step(filter, feed, i);
            if (i % every == 0) {
                BiasPair.weigh(forward, i / every, filter.bias());
            }
        }
        return new float[][] {forward[0], forward[1], forward[2]};
    }

    private void step(InertialFilter filter, SampleFeed feed, int i) {
        feed.next(stream, i);
        if (feed.doubt > 0) {
            filter.doubt(feed.doubt);
        }
        filter.step(feed.seconds, stream.ax(i), stream.ay(i), stream.az(i), feed.gx, feed.gy, feed.gz);
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

    /** Mean specific force of each block in the drifting frame, m/s²; adds up each block's doubt. */
    private float[][] forceOfBlocks(float[][] bias, float[] doubt) {
        float[][] force = new float[3][blocks];
        SampleFeed feed = SampleFeed.forward(rateHz);
        Attitude turned = new Attitude();
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < stream.size(); i++) {
            feed.next(stream, i);
            turn(turned, bias, feed, i);
            doubt[i / every] += (float) feed.doubt;
            double ax = stream.ax(i);
            double ay = stream.ay(i);
            double az = stream.az(i);
            x += turned.worldX(ax, ay, az);
            y += turned.worldY(ax, ay, az);
            z += turned.worldZ(ax, ay, az);
            if ((i + 1) % every == 0 || i + 1 == stream.size()) {
                int count = i % every + 1;
                force[0][i / every] = (float) (x / count);
                force[1][i / every] = (float) (y / count);
                force[2][i / every] = (float) (z / count);
                x = 0;
                y = 0;
                z = 0;
            }
        }
        return force;
    }

    private void lowPassBothWays(float[][] force) {
        InertialCoefficients c = InertialCoefficients.of(params, rateHz / every);
        double[] f = new double[3];
        LowPassBank forward = new LowPassBank(c.acceleration(), c.accelerationStart(), 3);
        for (int k = 0; k < blocks; k++) {
            filter(forward, force, k, f);
        }
        LowPassBank backward = new LowPassBank(c.acceleration(), c.accelerationStart(), 3);
        for (int k = blocks - 1; k >= 0; k--) {
            filter(backward, force, k, f);
        }
    }

    private static void filter(LowPassBank bank, float[][] force, int k, double[] work) {
        for (int a = 0; a < 3; a++) {
            work[a] = force[a][k];
        }
        bank.filter(work);
        for (int a = 0; a < 3; a++) {
            force[a][k] = (float) work[a];
        }
    }

    private OrientationTrack tilted(float[][] bias, float[][] force, FrameRepair repair) {
        OrientationTrack.Builder track = new OrientationTrack.Builder(stream.size());
        SampleFeed feed = SampleFeed.forward(rateHz);
        Attitude turned = new Attitude();
        Attitude jump = new Attitude();
        Attitude repaired = new Attitude();
        Attitude tilt = new Attitude();
        Attitude out = new Attitude();
        int r = 0;
        for (int i = 0; i < stream.size(); i++) {
            feed.next(stream, i);
            turn(turned, bias, feed, i);
            if (r < repair.size() && repair.start(r) == i / every && feed.doubt > 0) {
                jump.set(repair.turn(r));
                r++;
            }
            repaired.setProduct(jump, turned);
            double middle = i - (every - 1) / 2.0;
            tilt.pointUp(between(force[0], middle), between(force[1], middle), between(force[2], middle));
            out.setProduct(tilt, repaired);
            track.add(out.w, out.x, out.y, out.z);
        }
        return track.build();
    }

    private void turn(Attitude turned, float[][] bias, SampleFeed feed, int i) {
        turned.turnByBodyRate(
                feed.gx - between(bias[0], i),
                feed.gy - between(bias[1], i),
                feed.gz - between(bias[2], i),
                feed.seconds);
    }

    /** Reads a column of one value a block at a place counted in samples, which may lie before the first. */
    private double between(float[] column, double place) {
        if (column.length == 1) {
            return column[0];
        }
        double at = Math.max(0, Math.min(place / every, column.length - 1));
        int k = Math.min((int) at, column.length - 2);
        return column[k] + (at - k) * (column[k + 1] - column[k]);
    }
}

package evenfall.fusion.orientation;

import static evenfall.fusion.orientation.ErrorState.BIAS;
import static evenfall.fusion.orientation.ErrorState.MATRIX;
import static evenfall.fusion.orientation.ErrorState.OFFSET;
import static evenfall.fusion.orientation.ErrorState.PLACE;
import static evenfall.fusion.orientation.ErrorState.SCALE;
import static evenfall.fusion.orientation.ErrorState.SPEED;
import static evenfall.fusion.orientation.ErrorState.TILT;
import static evenfall.fusion.orientation.ErrorState.square;

import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

/**
 * Orientation by strapdown integration of turn, speed and place, whose errors a Kalman filter holds and takes out: a
 * body's speed is near 0 and it stays near its place, weakly, and surely at rest ({@link ErrorState},
 * {@link UsualMotion}). The sensors' constants are found on the way.
 *
 * <p>At the start, and after turns that were not seen, the mean force alone tells the tilt for a while
 * ({@link MeanForce}). docs/method.md has the formulas, docs/tried.md what was tried.
 */
final class MotionFilter implements OrientationFilter {

    /** Tilt, speed and place where a start ends in a rest: rad, m/s, m. */
    private static final double REST_TILT = Math.toRadians(1);

    private static final double REST_SPEED = 0.05;
    private static final double REST_PLACE = 0.02;

    /** Time over which a place at rest is drawn to 0, s m². */
    private static final double REST_PLACE_TIME = 1;

    /** A gap may hide a whole impact, which lasts about so long, s. */
    private static final double IMPACT_TIME = 0.1;

    /** How far a body may go in a gap though nothing speeds it up, m in the first second. */
    private static final double GAP_PLACE = 0.3;

    /** Share of a clipped force that may have been hidden. */
    private static final double HIDDEN_SHARE = 0.5;

    /** The parts looked at, in this order: speed and place axis by axis; at rest the gyroscope's bias as well. */
    private static final int[] SEEN = {SPEED, PLACE, SPEED + 1, PLACE + 1, SPEED + 2, PLACE + 2};

    private static final int[] SEEN_AT_REST = {
        SPEED, PLACE, SPEED + 1, PLACE + 1, SPEED + 2, PLACE + 2, BIAS, BIAS + 1, BIAS + 2
    };

    private final MotionParams params;
    private final LookLog log;
    private final int blockSamples;
    private final RestDetector rest;
    private final ErrorState errors;
    private final UsualMotion usual;
    private final BlockSums sums = new BlockSums();
    private final MeanForce start = new MeanForce();
    private final Attitude out = new Attitude();
    private final double[] matrix = {1, 0, 0, 0, 1, 0, 0, 0, 1};
    private final double[] speed = new double[3];
    private final double[] place = new double[3];

    /** Bias (3), gyroscope matrix (9), accelerometer offset (3) and scale (3), as in {@link ErrorState}. */
    private final double[] constants = new double[ErrorState.SIZE];

    /** Readings of the last two samples: force, rate. */
    private final double[] last = new double[6];

    private final double[] beforeLast = new double[6];
    private int samples;
    private int seen;
    private boolean begun;
    private boolean starting;
    private boolean forceClips;

    MotionFilter(MotionParams params, double rateHz, LookLog log) {
        this.params = params;
        this.log = log;
        this.blockSamples = Math.max(1, (int) Math.round(params.blockTime() * rateHz));
        this.rest = new RestDetector(rateHz);
        this.errors = new ErrorState(params);
        this.usual = new UsualMotion(params);
    }

    @Override
    public void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz) {
        if (starting) {
            if (start.seconds >= params.start().time() || rest.isResting()) {
                endStart();
            }
        } else if (samples >= blockSamples) {
            look();
        }
        if (!begun && (ax != 0 || ay != 0 || az != 0)) {
            begun = true;
            out.setFromForce(ax, ay, az);
            beginStart(0);
        }
        rest.step(ax, ay, az, gx, gy, gz);
        double[] c = constants;
        double rx = gx - c[BIAS];
        double ry = gy - c[BIAS + 1];
        double rz = gz - c[BIAS + 2];
        double wx = rx - c[MATRIX] * rx - c[MATRIX + 1] * ry - c[MATRIX + 2] * rz;
        double wy = ry - c[MATRIX + 3] * rx - c[MATRIX + 4] * ry - c[MATRIX + 5] * rz;
        double wz = rz - c[MATRIX + 6] * rx - c[MATRIX + 7] * ry - c[MATRIX + 8] * rz;
        double fx = ax - c[OFFSET] - c[SCALE] * ax;
        double fy = ay - c[OFFSET + 1] - c[SCALE + 1] * ay;
        double fz = az - c[OFFSET + 2] - c[SCALE + 2] * az;
        if (starting) {
            start.turned.turnByBodyRate(wx, wy, wz, seconds);
            start.add(seconds, fx, fy, fz);
            out.setProduct(start.tilt, start.turned);
        } else {
            out.turnByBodyRate(wx, wy, wz, seconds);
        }
        if (begun) {
            out.toMatrix(matrix);
            sums.add(matrix, seconds, rx, ry, rz, ax, ay, az);
            carry(seconds, fx, fy, fz);
            if (forceClips) {
                sums.hiddenSpeed += HIDDEN_SHARE * Vector3.length(ax, ay, az) * seconds;
                forceClips = false;
            }
            roughness(seconds, ax, ay, az, gx, gy, gz);
            samples++;
        }
    }

    /** Integrates force to speed and place. */
    private void carry(double seconds, double fx, double fy, double fz) {
        double[] r = matrix;
        double x = (r[0] * fx + r[1] * fy + r[2] * fz) * seconds;
        double y = (r[3] * fx + r[4] * fy + r[5] * fz) * seconds;
        double z = (r[6] * fx + r[7] * fy + r[8] * fz) * seconds;
        sums.forceX += x;
        sums.forceY += y;
        sums.forceZ += z;
        z -= Gravity.STANDARD * seconds;
        place[0] += (speed[0] + x / 2) * seconds;
        place[1] += (speed[1] + y / 2) * seconds;
        place[2] += (speed[2] + z / 2) * seconds;
        speed[0] += x;
        speed[1] += y;
        speed[2] += z;
    }

    /** Adds up how unevenly the readings change, from which follows how far their sums may be off. */
    private void roughness(double seconds, double ax, double ay, double az, double gx, double gy, double gz) {
        double[] l = last;
        double[] b = beforeLast;
        if (seen >= 2) {
            double change = square(ax - l[0]) + square(ay - l[1]) + square(az - l[2]);
            double bend = square(gx - 2 * l[3] + b[3]) + square(gy - 2 * l[4] + b[4]) + square(gz - 2 * l[5] + b[5]);
            sums.unevenForce += change * seconds * seconds;
            sums.unevenTurn += bend * seconds * seconds;
        }
        seen++;
        System.arraycopy(l, 0, b, 0, 6);
        l[0] = ax;
        l[1] = ay;
        l[2] = az;
        l[3] = gx;
        l[4] = gy;
        l[5] = gz;
    }

    /**
     * Ends a block: speed is near 0 and place near the usual one, each as surely as the body has kept to it.
     *
     * <p>Whole on purpose: below 325 bytes of code the Java machine would compile it anew within each step.
     */
    private void look() {
        samples = 0;
        errors.pass(sums);
        double tilt = errors.variance(TILT) + errors.variance(TILT + 1);
        if (tilt > square(params.lost())) {
            beginStart(Math.sqrt(tilt));
            return;
        }
        log.begin(sums);
        double seconds = sums.seconds;
        usual.pass(seconds, speed, place);
        boolean resting = rest.isResting();
        for (int part : resting ? SEEN_AT_REST : SEEN) {
            double off;
            double variance;
            if (part >= BIAS) {
                off = constants[part] - rest.slow(part - BIAS);
                variance = square(params.rest().turn()) / seconds;
            } else if (part >= PLACE) {
                off = place[part - PLACE];
                variance = resting ? REST_PLACE_TIME / seconds : usual.ofPlace(part - PLACE, seconds);
            } else {
                off = speed[part - SPEED];
                variance = resting ? square(params.rest().speed()) : usual.ofSpeed(part - SPEED, seconds);
            }
            errors.look(part, -off, variance, log);
        }
        errors.settle();
        log.end(errors);
        takeOver(errors.correction);
        sums.clear();
    }

    private void takeOver(double[] correction) {
        out.tiltBy(1, correction[TILT] / 2, correction[TILT + 1] / 2);
        for (int axis = 0; axis < 3; axis++) {
            speed[axis] += correction[SPEED + axis];
            place[axis] += correction[PLACE + axis];
        }
        for (int i = BIAS; i < ErrorState.SIZE; i++) {
            constants[i] += correction[i];
        }
    }

    /** Starts anew from the mean force, with the tilt held so far in doubt by {@code doubt} (rad; 0: nothing held). */
    private void beginStart(double doubt) {
        starting = true;
        samples = 0;
        start.begin(out, doubt);
        sums.clear();
    }

    private void endStart() {
        starting = false;
        samples = 0;
        boolean resting = rest.isResting();
        errors.forgetQuick();
        double tilt = square(resting ? REST_TILT : params.start().tilt());
        errors.addVariance(TILT, tilt);
        errors.addVariance(TILT + 1, tilt);
        for (int axis = 0; axis < 3; axis++) {
            errors.addVariance(
                    SPEED + axis, square(resting ? REST_SPEED : params.start().speed()));
            errors.addVariance(
                    PLACE + axis, square(resting ? REST_PLACE : params.start().place()));
            speed[axis] = 0;
            place[axis] = 0;
        }
        usual.restart();
        log.started(errors, sums, start.tilt);
        sums.clear();
    }

    @Override
    public boolean makesUpForClipping() {
        return true;
    }

    @Override
    public void doubt(double x, double y, double z) {
        if (!starting) {
            sums.doubt(matrix, 0, x);
            sums.doubt(matrix, 1, y);
            sums.doubt(matrix, 2, z);
        }
    }

    @Override
    public void forceClips() {
        forceClips = true;
    }

    @Override
    public void gap(double seconds, double doubt) {
        boolean wasStarting = starting;
        if (wasStarting) {
            endStart();
        }
        finish();
        rest.interrupt();
        seen = 0;
        double tilt = Math.sqrt(errors.variance(TILT) + errors.variance(TILT + 1) + 2 * square(doubt));
        if (wasStarting || starting || tilt > params.lost()) {
            beginStart(tilt);
            return;
        }
        double gain = params.gapForce() * Math.min(seconds, IMPACT_TIME);
        double way = gain * seconds / 2 + GAP_PLACE * Math.min(seconds, 1);
        for (int axis = 0; axis < 3; axis++) {
            errors.addVariance(SPEED + axis, square(gain));
            errors.addVariance(PLACE + axis, square(way));
        }
        doubt(doubt, doubt, doubt);
    }

    /** Looks at what has come since the last look, though the block is not full; a start ends with what it has. */
    void finish() {
        if (starting) {
            endStart();
        } else if (samples > 0) {
            look();
        }
    }

    /** Whether the mean force alone tells the tilt; {@link #turned} is then what the turn rate alone tells. */
    boolean isStarting() {
        return starting;
    }

    Attitude turned() {
        return start.turned;
    }

    /** Constant {@code i} as counted in {@link ErrorState}. */
    double constant(int i) {
        return constants[i];
    }

    boolean isResting() {
        return rest.isResting();
    }

    @Override
    public double w() {
        return out.w;
    }

    @Override
    public double x() {
        return out.x;
    }

    @Override
    public double y() {
        return out.y;
    }

    @Override
    public double z() {
        return out.z;
    }
}

package evenfall.fusion.orientation;

/**
 * Orientation by a low-pass on specific force in an almost inertial frame, with the gyroscope's bias estimated at rest
 * and in motion. Swings of acceleration average out because they are filtered after the rotation.
 *
 * <p>Source: Laidig and Seel 2023, Information Fusion 91:187, doi 10.1016/j.inffus.2022.10.014, worked from the
 * formulas: the yardstick that {@link MotionFilter} is measured against.
 */
final class InertialFilter implements OrientationFilter {

    private static final double[] UNIT = {1, 0, 0, 0, 1, 0, 0, 0, 1};

    private final InertialCoefficients coefficients;
    private final InertialState state;
    private final Attitude out = new Attitude();

    /** A filter at its start, for samples at {@code rateHz}. */
    InertialFilter(InertialParams params, double rateHz) {
        this.coefficients = InertialCoefficients.of(params, rateHz);
        this.state = new InertialState(params, coefficients);
    }

    @Override
    public void step(double seconds, double ax, double ay, double az, double gx, double gy, double gz) {
        InertialState s = state;
        s.rest.step(ax, ay, az, gx, gy, gz);
        s.turned.turnByBodyRate(gx - s.bias.x, gy - s.bias.y, gz - s.bias.z, seconds);
        if (ax != 0 || ay != 0 || az != 0) {
            s.slowForce[0] = s.turned.worldX(ax, ay, az);
            s.slowForce[1] = s.turned.worldY(ax, ay, az);
            s.slowForce[2] = s.turned.worldZ(ax, ay, az);
            s.force.filter(s.slowForce);
            correct();
        }
        out.setProduct(s.tilt, s.turned);
    }

    /** Turns the tilt so that the slow specific force points up, and lets the turn tell of the bias. */
    private void correct() {
        InertialState s = state;
        double ux = s.tilt.worldX(s.slowForce[0], s.slowForce[1], s.slowForce[2]);
        double uy = s.tilt.worldY(s.slowForce[0], s.slowForce[1], s.slowForce[2]);
        double uz = s.tilt.worldZ(s.slowForce[0], s.slowForce[1], s.slowForce[2]);
        double norm = Math.sqrt(ux * ux + uy * uy + uz * uz);
        if (!(norm > 0)) {
            return;
        }
        double lx = ux / norm;
        double ly = uy / norm;
        s.tilt.tiltUp(lx, ly, uz / norm);
        estimateBias(lx, ly);
    }

    private void estimateBias(double lx, double ly) {
        InertialState s = state;
        BiasFilter bias = s.bias;
        double[] r = s.slowMatrix;
        out.setProduct(s.tilt, s.turned);
        out.toMatrix(r);
        r[9] = r[0] * bias.x + r[1] * bias.y + r[2] * bias.z;
        r[10] = r[3] * bias.x + r[4] * bias.y + r[5] * bias.z;
        s.alongside.filter(r);
        bias.grow();
        if (s.rest.isResting()) {
            double w = coefficients.restWeight();
            bias.measure(UNIT, s.rest.slow(0) - bias.x, s.rest.slow(1) - bias.y, s.rest.slow(2) - bias.z, w, w);
        } else {
            double ex = -ly / coefficients.interval() + r[9] - (r[0] * bias.x + r[1] * bias.y + r[2] * bias.z);
            double ey = lx / coefficients.interval() + r[10] - (r[3] * bias.x + r[4] * bias.y + r[5] * bias.z);
            double ez = -(r[6] * bias.x + r[7] * bias.y + r[8] * bias.z);
            bias.measure(r, ex, ey, ez, coefficients.motionWeight(), coefficients.verticalWeight());
        }
    }

    BiasFilter bias() {
        return state.bias;
    }

    boolean isResting() {
        return state.rest.isResting();
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

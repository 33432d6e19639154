package evenfall.fusion.orientation;

/** Tells rest: both sensors near their own slow average for long enough (Laidig and Seel 2023). */
final class RestDetector {

    private final InertialCoefficients coefficients;
    private final double turnRateLimit;
    private final double accelerationLimit;
    private final double biasLimit;
    private final LowPassBank turnRateFilter;
    private final LowPassBank accelerationFilter;
    private final double[] slow = new double[3];
    private int quietSamples;

    /** Slow average of the turn rate, rad/s. */
    double slowX;

    double slowY;
    double slowZ;

    RestDetector(InertialParams params, InertialCoefficients coefficients) {
        this.coefficients = coefficients;
        this.turnRateLimit = params.restTurnRate();
        this.accelerationLimit = params.restAcceleration();
        this.biasLimit = params.biasLimit();
        this.turnRateFilter = new LowPassBank(coefficients.rest(), coefficients.restStart(), 3);
        this.accelerationFilter = new LowPassBank(coefficients.rest(), coefficients.restStart(), 3);
    }

    void step(double ax, double ay, double az, double gx, double gy, double gz) {
        load(gx, gy, gz);
        turnRateFilter.filter(slow);
        slowX = slow[0];
        slowY = slow[1];
        slowZ = slow[2];
        boolean quiet = offSquare(gx, gy, gz) < turnRateLimit * turnRateLimit
                && Math.abs(slowX) <= biasLimit
                && Math.abs(slowY) <= biasLimit
                && Math.abs(slowZ) <= biasLimit;
        load(ax, ay, az);
        accelerationFilter.filter(slow);
        quiet &= offSquare(ax, ay, az) < accelerationLimit * accelerationLimit;
        quietSamples = quiet ? Math.min(quietSamples + 1, coefficients.restSamples()) : 0;
    }

    boolean isResting() {
        return quietSamples >= coefficients.restSamples();
    }

    void interrupt() {
        quietSamples = 0;
    }

    private void load(double x, double y, double z) {
        slow[0] = x;
        slow[1] = y;
        slow[2] = z;
    }

    private double offSquare(double x, double y, double z) {
        double dx = x - slow[0];
        double dy = y - slow[1];
        double dz = z - slow[2];
        return dx * dx + dy * dy + dz * dz;
    }
}

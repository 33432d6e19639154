package evenfall.fusion.orientation;

/** What the low-pass-in-inertial-frame filter carries from sample to sample. */
final class InertialState {

    /** Slowly drifting frame from sensor: the gyroscope's turn alone. */
    final Attitude turned = new Attitude();

    /** World from the slowly drifting frame: the accelerometer's share. */
    final Attitude tilt = new Attitude();

    final BiasFilter bias;
    final RestDetector rest;

    /** Low-pass on specific force in the drifting frame. */
    final LowPassBank force;

    /** Low-pass on the rotation matrix (9) and on the level parts of the bias (2), beside that on specific force. */
    final LowPassBank alongside;

    /** Specific force after the low-pass, drifting frame, m/s². */
    final double[] slowForce = new double[3];

    /** Work space of {@link #alongside}. */
    final double[] slowMatrix = new double[11];

    InertialState(InertialParams params, InertialCoefficients c) {
        bias = new BiasFilter(c.biasStart(), c.biasGrowth(), params.biasLimit());
        rest = new RestDetector(1 / c.interval());
        force = new LowPassBank(c.acceleration(), c.accelerationStart(), 3);
        alongside = new LowPassBank(c.acceleration(), c.accelerationStart(), 11);
    }
}

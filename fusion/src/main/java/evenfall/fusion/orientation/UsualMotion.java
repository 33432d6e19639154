package evenfall.fusion.orientation;

import static evenfall.fusion.orientation.ErrorState.square;

/**
 * How fast and how far from its place a body usually is of late, as variances of one axis. A look at speed or place
 * trusts 0 as much as the body has kept to it; one that walks off is let go.
 */
final class UsualMotion {

    private final MotionParams params;
    private double levelSpeed;
    private double levelPlace;
    private double verticalSpeed;
    private double verticalPlace;

    UsualMotion(MotionParams params) {
        this.params = params;
        restart();
    }

    void restart() {
        levelSpeed = square(params.start().speed());
        verticalSpeed = levelSpeed;
        levelPlace = square(params.start().place());
        verticalPlace = levelPlace;
    }

    /** Takes in a block's speed (m/s) and place (m). */
    void pass(double seconds, double[] speed, double[] place) {
        double share = Math.min(1, seconds / params.usual().time());
        levelSpeed += share * ((square(speed[0]) + square(speed[1])) / 2 - levelSpeed);
        verticalSpeed += share * (square(speed[2]) - verticalSpeed);
        levelPlace += share * ((square(place[0]) + square(place[1])) / 2 - levelPlace);
        verticalPlace += share * (square(place[2]) - verticalPlace);
    }

    /** Variance with which a block of {@code seconds} sees a speed of 0 along {@code axis}, (m/s)². */
    double ofSpeed(int axis, double seconds) {
        double usual = axis < 2 ? levelSpeed : verticalSpeed;
        return (usual + square(params.usual().leastSpeed())) * params.usual().speedTime() / seconds;
    }

    /** Variance with which a block of {@code seconds} sees the usual place along {@code axis}, m². */
    double ofPlace(int axis, double seconds) {
        double usual = axis < 2 ? levelPlace : verticalPlace;
        return (usual + square(params.usual().leastPlace())) * params.usual().placeTime() / seconds;
    }
}

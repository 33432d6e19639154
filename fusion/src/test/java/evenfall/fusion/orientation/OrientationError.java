package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;

/**
 * How far an estimated orientation is off a true one (Laidig, Caruso, Cereatti and Seel 2021, Data 6(7):72): all of it,
 * its part about the vertical and the rest.
 *
 * @param totalDegrees size of the turn between the two
 * @param headingDegrees its part about the vertical
 * @param inclinationDegrees what remains
 */
record OrientationError(double totalDegrees, double headingDegrees, double inclinationDegrees) {

    static OrientationError of(Quaternion estimate, Quaternion truth) {
        Quaternion e = estimate.times(truth.conjugate());
        return new OrientationError(
                Math.toDegrees(e.angle()),
                Math.toDegrees(2 * Math.atan(Math.abs(e.z() / e.w()))),
                Math.toDegrees(2 * Math.atan2(Math.hypot(e.x(), e.y()), Math.hypot(e.w(), e.z()))));
    }
}

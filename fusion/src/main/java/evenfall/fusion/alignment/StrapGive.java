package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;

/**
 * How a sensor tips on its strap and the flesh under it when force acts on it: its centre of mass lies behind and beside
 * the place where it is held, so a force f in segment axes turns it by {@code sag · (f_z - 1 g) + tip · f_x} forward and by
 * {@code -tip · f_y} to the right, as a spring does below its own frequency. In quiet stance it does not tip: the
 * mounting holds what weight alone does.
 *
 * @param sag rad per m/s² of force along the segment
 * @param tip rad per m/s² of force across the segment
 */
public record StrapGive(double sag, double tip) {

    /** A sensor that is fixed to the bone. */
    public static final StrapGive NONE = new StrapGive(0, 0);

    /** How far the sensor is tipped forward by a force in segment axes, rad. */
    public double forward(double fx, double fz) {
        return sag * (fz - Gravity.STANDARD) + tip * fx;
    }

    /** How far the sensor is tipped to the right by a force in segment axes, rad. */
    public double right(double fy) {
        return -tip * fy;
    }

    /** The turn of a sensor, in segment axes, that is tipped so far. */
    public static Quaternion turn(double rightRad, double forwardRad) {
        return Quaternion.fromBodyRate(new Vector3(rightRad, forwardRad, 0), 1);
    }
}

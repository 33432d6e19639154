package evenfall.fusion.rotation;

/**
 * A rotation as a unit quaternion: Hamilton product, scalar first. {@code q} and {@code -q} are the same rotation.
 *
 * <p>Records are for mathematics inside a step and for results; kept tracks lie in arrays.
 *
 * @param w scalar part
 * @param x along the first axis
 * @param y along the second axis
 * @param z along the third axis
 */
public record Quaternion(double w, double x, double y, double z) {

    public static final Quaternion IDENTITY = new Quaternion(1, 0, 0, 0);
}

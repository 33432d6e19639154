package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;

/**
 * The orientation of one sensor at every sample of its stream: world from sensor, heading free.
 *
 * <p>Row {@code i} is the orientation after the turn rate of sample {@code i} has acted over the interval that ends
 * at sample {@code i}. The array given is kept, not copied: whoever makes a track hands it over.
 */
public final class OrientationTrack {

    private final float[] wxyz;

    /**
     * A track over {@code wxyz.length / 4} samples.
     *
     * @param wxyz unit quaternions one after another, scalar first
     */
    public OrientationTrack(float[] wxyz) {
        if (wxyz.length % 4 != 0) {
            throw new IllegalArgumentException("a track takes four numbers a sample, not " + wxyz.length + " in all");
        }
        this.wxyz = wxyz;
    }

    /** Number of samples. */
    public int size() {
        return wxyz.length / 4;
    }

    /** Scalar part at sample {@code i}. */
    public double w(int i) {
        return wxyz[4 * i];
    }

    /** First vector part at sample {@code i}. */
    public double x(int i) {
        return wxyz[4 * i + 1];
    }

    /** Second vector part at sample {@code i}. */
    public double y(int i) {
        return wxyz[4 * i + 2];
    }

    /** Third vector part at sample {@code i}. */
    public double z(int i) {
        return wxyz[4 * i + 3];
    }

    /** World from sensor at sample {@code i}. */
    public Quaternion at(int i) {
        return new Quaternion(w(i), x(i), y(i), z(i));
    }
}

package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * The axis that turn rates lie along: the eigenvector of the largest eigenvalue of the sum of rate times rate
 * transposed, without taking out a mean (Seel, Raisch and Schauer 2014, doi 10.3390/s140406891; Kong et al. 2016, doi
 * 10.3390/s16122011).
 */
public final class PrincipalAxis {

    private final double[][] sum = new double[3][3];
    private double x;
    private double y;
    private double z;

    /** Adds a turn rate with a weight; a negative rate tells the same axis. */
    public void add(double rx, double ry, double rz, double weight) {
        sum[0][0] += weight * rx * rx;
        sum[0][1] += weight * rx * ry;
        sum[0][2] += weight * rx * rz;
        sum[1][1] += weight * ry * ry;
        sum[1][2] += weight * ry * rz;
        sum[2][2] += weight * rz * rz;
    }

    /** Tells which way round: the axis found will have a component along the sum of these. */
    public void addSense(double sx, double sy, double sz) {
        x += sx;
        y += sy;
        z += sz;
    }

    /**
     * The axis, of unit length.
     *
     * @throws IllegalArgumentException if nothing was added
     */
    public Axis solve() {
        sum[1][0] = sum[0][1];
        sum[2][0] = sum[0][2];
        sum[2][1] = sum[1][2];
        double trace = sum[0][0] + sum[1][1] + sum[2][2];
        if (!(trace > 0)) {
            throw new IllegalArgumentException("no turning, no axis");
        }
        EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(sum));
        double[] values = eigen.getRealEigenvalues();
        int best = values[0] >= values[1] && values[0] >= values[2] ? 0 : values[1] >= values[2] ? 1 : 2;
        RealVector v = eigen.getEigenvector(best);
        Vector3 axis = new Vector3(v.getEntry(0), v.getEntry(1), v.getEntry(2)).normalised();
        boolean turned = axis.dot(new Vector3(x, y, z)) < 0;
        return new Axis(turned ? axis.times(-1) : axis, values[best] / trace);
    }

    /**
     * What was found.
     *
     * @param direction unit vector
     * @param share the largest eigenvalue's part of their sum, 1/3 to 1: how well one axis tells it all
     */
    public record Axis(Vector3 direction, double share) {}
}

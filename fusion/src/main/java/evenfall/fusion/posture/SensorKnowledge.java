package evenfall.fusion.posture;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What windows that are done with told of a sensor's own bias and scales: their say in the normal equations of the unknowns
 * that all windows share. With it later windows are smoothed as if the earlier ones stood beside them.
 *
 * @param information inverse covariance, without what is known of any sensor
 * @param right information times the value
 */
public record SensorKnowledge(RealMatrix information, RealVector right) {

    /** Nothing was told. */
    public static final SensorKnowledge NONE = new SensorKnowledge(
            new Array2DRowRealMatrix(MotionErrors.SHARED, MotionErrors.SHARED),
            new ArrayRealVector(MotionErrors.SHARED));
}

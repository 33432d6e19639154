package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/**
 * The one scale all landings of a page are drawn on, so that they can be compared by eye.
 *
 * @param fromS left end of the time axis, s from contact
 * @param toS right end
 * @param topG upper end of acceleration, g; the lower end is 0
 * @param backward lower end of bend and tilt, deg, 0 or less
 * @param forward upper end of bend and tilt, deg
 * @param rotation both ends of rotation and twist, deg
 * @param lean both ends of lean and level, deg
 */
public record LandingScale(
        double fromS, double toS, double topG, double backward, double forward, double rotation, double lean) {

    private static final double FROM_S = -0.8;
    private static final double TO_S = 1.6;
    private static final double STEP_DEGREES = 10;
    private static final double STEP_G = 2;

    /** A scale that holds every value of these traces between 0.8 s before and 1.6 s after contact. */
    public static LandingScale over(Collection<LandingTrace> traces) {
        double g = 4;
        double backward = 0;
        double forward = 20;
        double rotation = 10;
        double lean = 10;
        for (LandingTrace trace : traces) {
            g = Math.max(g, Math.max(highest(trace, trace.pelvisG()), highest(trace, trace.upperBackG())));
            forward = Math.max(
                    forward, Math.max(highest(trace, trace.pelvicTilt()), highest(trace, trace.trunkFlexion())));
            backward = Math.min(
                    backward, Math.min(lowest(trace, trace.pelvicTilt()), lowest(trace, trace.trunkFlexion())));
            rotation = Math.max(rotation, Math.max(reach(trace, trace.pelvicRotation()), reach(trace, trace.twist())));
            lean = Math.max(lean, Math.max(reach(trace, trace.pelvicObliquity()), reach(trace, trace.trunkLean())));
        }
        return new LandingScale(
                FROM_S,
                TO_S,
                up(g, STEP_G),
                -up(-backward, STEP_DEGREES),
                up(forward, STEP_DEGREES),
                up(rotation, STEP_DEGREES),
                up(lean, STEP_DEGREES));
    }

    /** Whether a moment lies on the time axis. */
    boolean shows(double fromContactS) {
        return fromContactS >= fromS && fromContactS <= toS;
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step) * step;
    }

    private static double reach(LandingTrace trace, double @Nullable [] column) {
        return Math.max(highest(trace, column), -lowest(trace, column));
    }

    private static double highest(LandingTrace trace, double @Nullable [] column) {
        double found = Double.NEGATIVE_INFINITY;
        for (int i = 0; column != null && i < column.length; i++) {
            if (trace.timeS()[i] >= FROM_S && trace.timeS()[i] <= TO_S && column[i] > found) {
                found = column[i];
            }
        }
        return found;
    }

    private static double lowest(LandingTrace trace, double @Nullable [] column) {
        double found = Double.POSITIVE_INFINITY;
        for (int i = 0; column != null && i < column.length; i++) {
            if (trace.timeS()[i] >= FROM_S && trace.timeS()[i] <= TO_S && column[i] < found) {
                found = column[i];
            }
        }
        return found;
    }
}

package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import evenfall.ingest.words.Words;
import java.util.Collection;
import org.jfree.chart.axis.NumberAxis;
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
 * @param lowM lower end of the pelvis's height, m against contact, 0 or less
 * @param highM upper end of the pelvis's height, m
 * @param speed both ends of the pelvis's speed, m/s
 */
public record LandingScale(
        double fromS,
        double toS,
        double topG,
        double backward,
        double forward,
        double rotation,
        double lean,
        double lowM,
        double highM,
        double speed) {

    private static final Words WORDS = Words.beside(LandingScale.class);

    private static final double FROM_S = -0.8;
    private static final double TO_S = 1.6;
    private static final double STEP_DEGREES = 10;
    private static final double STEP_G = 2;
    private static final double STEP_M = 0.2;
    private static final double STEP_SPEED = 2;

    /** A scale that holds every value of these traces between 0.8 s before and 1.6 s after contact. */
    public static LandingScale over(Collection<LandingTrace> traces) {
        double g = 4;
        double backward = 0;
        double forward = 20;
        double rotation = 10;
        double lean = 10;
        double low = -0.2;
        double high = 0.4;
        double speed = 2;
        for (LandingTrace trace : traces) {
            g = Math.max(g, Math.max(highest(trace, trace.pelvisG()), highest(trace, trace.upperBackG())));
            forward = Math.max(
                    forward, Math.max(highest(trace, trace.pelvicTilt()), highest(trace, trace.trunkFlexion())));
            backward = Math.min(
                    backward, Math.min(lowest(trace, trace.pelvicTilt()), lowest(trace, trace.trunkFlexion())));
            rotation = Math.max(rotation, Math.max(reach(trace, trace.pelvicRotation()), reach(trace, trace.twist())));
            lean = Math.max(lean, Math.max(reach(trace, trace.pelvicObliquity()), reach(trace, trace.trunkLean())));
            low = Math.min(low, lowest(trace, trace.heightM()));
            high = Math.max(high, highest(trace, trace.heightM()));
            speed = Math.max(speed, reach(trace, trace.verticalSpeedMS()));
        }
        return new LandingScale(
                FROM_S,
                TO_S,
                up(g, STEP_G),
                -up(-backward, STEP_DEGREES),
                up(forward, STEP_DEGREES),
                up(rotation, STEP_DEGREES),
                up(lean, STEP_DEGREES),
                -up(-low, STEP_M),
                up(high, STEP_M),
                up(speed, STEP_SPEED));
    }

    /** Whether a moment lies on the time axis. */
    boolean shows(double fromContactS) {
        return fromContactS >= fromS && fromContactS <= toS;
    }

    /** The axis of a panel, by its key. */
    NumberAxis axis(String panel) {
        return switch (panel) {
            case "acceleration" -> Plots.axis(0, topG, Plots.step(topG), AxisWords.plain(0));
            case "flexion" -> between(backward, forward, "axis.forward", "axis.backward", 0);
            case "rotation" -> between(-rotation, rotation, "axis.left", "axis.right", 0);
            case "lean" -> {
                // Lean is positive to the right; turned over, so that left is up as in the panel above it.
                NumberAxis axis = between(-lean, lean, "axis.right", "axis.left", 0);
                axis.setInverted(true);
                yield axis;
            }
            case "height" -> between(lowM, highM, "axis.above", "axis.below", 1);
            case "speed" -> between(-speed, speed, "axis.up", "axis.down", 0);
            default -> throw new IllegalArgumentException("there is no panel " + panel);
        };
    }

    private static NumberAxis between(double low, double high, String above, String below, int decimals) {
        return Plots.axis(low, high, Plots.step(high - low), AxisWords.sided(WORDS, above, below, decimals));
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step - 1e-9) * step;
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

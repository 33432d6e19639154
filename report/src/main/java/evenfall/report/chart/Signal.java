package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A line of the chart of one landing: where it is drawn and what it is called. */
public enum Signal {
    PELVIS_G("acceleration", "line.pelvis", LandingTrace::pelvisG),
    UPPER_BACK_G("acceleration", "line.upperBack", LandingTrace::upperBackG),
    PELVIC_TILT("flexion", "line.pelvis", LandingTrace::pelvicTilt),
    TRUNK_FLEXION("flexion", "line.trunk", LandingTrace::trunkFlexion),
    PELVIC_ROTATION("rotation", "line.pelvis", LandingTrace::pelvicRotation),
    TWIST("rotation", "line.twist", LandingTrace::twist),
    PELVIC_OBLIQUITY("lean", "line.pelvis", LandingTrace::pelvicObliquity),
    TRUNK_LEAN("lean", "line.trunk", LandingTrace::trunkLean),
    HEIGHT("height", "line.pelvis", LandingTrace::heightM),
    SPEED("speed", "line.pelvis", LandingTrace::verticalSpeedMS);

    private final String panel;
    private final String words;

    @SuppressWarnings("ImmutableEnumChecker") // Its function holds no state.
    private final Function<LandingTrace, double @Nullable []> column;

    Signal(String panel, String words, Function<LandingTrace, double @Nullable []> column) {
        this.panel = panel;
        this.words = words;
        this.column = column;
    }

    /** Key of the panel it is drawn in. */
    String panel() {
        return panel;
    }

    /** Key of its name in the bundle. */
    String words() {
        return words;
    }

    /** Its values in a trace, or null where they were not measured. */
    double @Nullable [] of(LandingTrace trace) {
        return column.apply(trace);
    }
}

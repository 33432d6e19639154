package evenfall.report.form;

/**
 * The limits form is judged by; a coach may change each. A measure fails beyond its limit, not at it.
 *
 * @param meanBrakingG largest mean braking, g
 * @param pelvicRotationDeg largest change of pelvic rotation to either side, deg
 * @param pelvicObliquityDeg largest change of pelvic obliquity to either side, deg
 * @param trunkLeanDeg largest change of trunk lean to either side, deg
 * @param twistDeg largest change of twist to either side, deg
 * @param lateralM farthest the pelvis may be beside the feet at the lowest point, m
 * @param behindFeetM farthest the pelvis may be behind the feet at the lowest point, m
 * @param stepsBack steps back after the landing that are still no fault
 * @param tiltBackDeg farthest the pelvis may tilt back, deg
 * @param spineFlexionDeg farthest the spine may fold, deg
 * @param collapseDegPerS fastest the spine may fold, deg/s
 */
public record FormLimits(
        double meanBrakingG,
        double pelvicRotationDeg,
        double pelvicObliquityDeg,
        double trunkLeanDeg,
        double twistDeg,
        double lateralM,
        double behindFeetM,
        int stepsBack,
        double tiltBackDeg,
        double spineFlexionDeg,
        double collapseDegPerS) {

    /** Where a coach starts from: common practice, no source. */
    public static final FormLimits STARTING = new FormLimits(5.0, 6, 5, 6, 8, 0.06, 0.10, 0, 8, 20, 200);

    public FormLimits {
        double[] all = {
            meanBrakingG,
            pelvicRotationDeg,
            pelvicObliquityDeg,
            trunkLeanDeg,
            twistDeg,
            lateralM,
            behindFeetM,
            stepsBack,
            tiltBackDeg,
            spineFlexionDeg,
            collapseDegPerS
        };
        for (double limit : all) {
            if (!(limit >= 0 && Double.isFinite(limit))) {
                throw new IllegalArgumentException("a limit of form is a size and cannot be " + limit);
            }
        }
    }
}

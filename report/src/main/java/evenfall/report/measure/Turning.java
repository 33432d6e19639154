package evenfall.report.measure;

import evenfall.fusion.landing.Side;

/** Which measures have a side, and how they are turned so that + is towards the landing foot. */
public enum Turning {
    /** Has no side. */
    NONE,
    /** Stored with left positive: the left landing keeps its sign and the right one flips. */
    LEFT_POSITIVE,
    /** Stored with right positive: the right landing keeps its sign and the left one flips. */
    RIGHT_POSITIVE;

    /** How the measure of that name is turned. */
    public static Turning of(String measure) {
        String group = measure.indexOf('.') < 0 ? measure : measure.substring(0, measure.indexOf('.'));
        return switch (group) {
            case "pelvicRotationDeg", "twistDeg", "lateralShiftM" -> LEFT_POSITIVE;
            case "pelvicObliquityDeg", "trunkLeanDeg" -> RIGHT_POSITIVE;
            case "overFeetM" -> measure.startsWith("overFeetM.lateral") ? LEFT_POSITIVE : NONE;
            default -> NONE;
        };
    }

    /** A value of a landing on one foot, turned to that foot; turning twice gives the value back. */
    public double turned(double value, Side foot) {
        boolean keeps = this == NONE || (this == LEFT_POSITIVE) == (foot == Side.LEFT);
        return keeps ? value : -value;
    }
}

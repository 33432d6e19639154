package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * The signals of one landing for a chart: columns of one length on one time axis, from before take-off to after
 * settling. Angles in deg with the contract's zero and signs; the columns of the upper back are null without it. The
 * arrays are kept as they are: read, do not write.
 *
 * @param timeS s from contact
 * @param pelvisG resultant of the pelvis, g, unfiltered
 * @param upperBackG resultant of the upper back, g, or null
 * @param heightM height of the pelvis against contact, m
 * @param verticalSpeedMS speed of the pelvis upward, m/s
 * @param pelvicTilt deg, forward positive
 * @param pelvicObliquity deg, right side lower positive
 * @param pelvicRotation deg, to the left positive
 * @param trunkFlexion deg, forward positive, or null
 * @param trunkLean deg, to the right positive, or null
 * @param twist deg, upper back turned to the left of the pelvis positive, or null
 */
@SuppressWarnings("ArrayRecordComponent") // columns for charts, compared by nobody
public record LandingTrace(
        double[] timeS,
        double[] pelvisG,
        double @Nullable [] upperBackG,
        double[] heightM,
        double[] verticalSpeedMS,
        double[] pelvicTilt,
        double[] pelvicObliquity,
        double[] pelvicRotation,
        double @Nullable [] trunkFlexion,
        double @Nullable [] trunkLean,
        double @Nullable [] twist) {}

package evenfall.fusion.landing;

import org.jspecify.annotations.Nullable;

/**
 * One standard deviation of the error of each angle's change, deg: a fixed part (noise, strap, filter), a part of the
 * change (gyroscope scale), what a wrong mounting heading turns over from another axis, and what an impact does to the
 * integration. Root sum of squares of independent parts.
 *
 * @param pelvisHeading sigma of the pelvis's mounting heading, rad
 * @param upperHeading the same of the upper back, rad
 * @param peakG resultant peak of the pelvis, g
 * @param upperPeakG the same of the upper back, g; 0 without
 * @param tiltDeg how sure the vertical of the pelvis is through the landing, deg
 * @param upperTiltDeg the same of the upper back, deg
 * @param headingDriftDeg how sure the heading is, deg, both sensors alike
 * @param levelDeg how far the pelvis may lean to a side in the stance that is called upright, deg
 * @param upperLevelDeg the same of the upper back, deg
 */
record AngleSigmas(
        double pelvisHeading,
        double upperHeading,
        double peakG,
        double upperPeakG,
        double tiltDeg,
        double upperTiltDeg,
        double headingDriftDeg,
        double levelDeg,
        double upperLevelDeg) {

    /** Straps rock fore and aft more than to the sides; a tilt to the side is surer by this. */
    private static final double SIDEWAYS = 0.6;

    Posture apply(Posture p) {
        double tilt = size(p.pelvicTilt());
        double obliquity = size(p.pelvicObliquity());
        double flexion = size(p.trunkFlexion());
        double lean = size(p.trunkLean());
        double over = 0.8 * flexion;
        // A segment that leans to a side when it is called upright turns as it folds.
        double turned = levelDeg * sineOfFarthest(p.pelvicTilt());
        double upperTurned = upperLevelDeg * sineOfFarthest(p.trunkFlexion());
        return new Posture(
                with(
                        p.trunkFlexion(),
                        0.08,
                        0.005 * flexion,
                        0.5 * lean * upperHeading,
                        0.01 * upperPeakG,
                        upperTiltDeg),
                with(p.trunkLean(), 0.05, 0.009 * lean, 0.9 * flexion * upperHeading, 0, upperTiltDeg),
                with(
                        p.pelvicRotation(),
                        0.05,
                        0.01 * size(p.pelvicRotation()),
                        0.7 * tilt * pelvisHeading,
                        turned,
                        headingDriftDeg),
                with(p.pelvicTilt(), 0.15, 0.005 * tilt, 0.7 * obliquity * pelvisHeading, 0.015 * peakG, tiltDeg),
                with(p.pelvicObliquity(), 0.02, 0.005 * obliquity, 0.8 * tilt * pelvisHeading, 0, SIDEWAYS * tiltDeg),
                with(
                        p.twist(),
                        0.2,
                        0.028 * size(p.twist()),
                        over * Math.hypot(pelvisHeading, upperHeading),
                        Math.hypot(turned, upperTurned),
                        headingDriftDeg),
                with(
                        p.spineFlexion(),
                        0.1,
                        0.007 * size(p.spineFlexion()),
                        0,
                        0.012 * Math.hypot(peakG, upperPeakG),
                        Math.hypot(tiltDeg, upperTiltDeg)));
    }

    private static double sineOfFarthest(@Nullable Excursion e) {
        return e == null
                ? 0
                : Math.sin(Math.toRadians(Math.min(90, Math.max(Math.abs(e.max()), Math.abs(e.contact())))));
    }

    private static double size(@Nullable Excursion e) {
        return e == null ? 0 : Math.abs(e.change());
    }

    private static @Nullable Excursion with(@Nullable Excursion e, double... parts) {
        if (e == null) {
            return null;
        }
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return new Excursion(e.contact(), e.peak(), e.lowest(), e.max(), e.change(), Math.sqrt(sum));
    }
}

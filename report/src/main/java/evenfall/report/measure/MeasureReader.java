package evenfall.report.measure;

import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Sigma;
import org.jspecify.annotations.Nullable;

/**
 * Takes a measure out of a landing by its name. In one place by names, not by a function a measure: Java takes a third of a
 * millisecond over each function at every start.
 */
final class MeasureReader {

    private MeasureReader() {}

    /**
     * A value, or null where it could not be measured.
     *
     * @throws IllegalArgumentException if there is no measure of that name
     */
    static @Nullable Double read(String name, Measures m) {
        int dot = name.indexOf('.');
        String group = dot < 0 ? name : name.substring(0, dot);
        String part = name.substring(dot < 0 ? name.length() : dot + 1);
        return switch (group) {
            case "flightS" -> m.fall().flightS();
            case "impactSpeedMS" -> m.fall().impactSpeedMS();
            case "dropHeightM" -> m.fall().dropHeightM();
            case "peakG" -> m.impact().peakG();
            case "peakUpperBackG" -> m.impact().peakUpperBackG();
            case "peakEstimatedG" -> of(m.impact().peakEstimatedG(), part);
            case "riseMs" -> m.impact().riseMs();
            case "loadingRateGPerS" -> m.impact().loadingRateGPerS();
            case "depthM" -> m.braking().depthM();
            case "brakingS" -> m.braking().brakingS();
            case "meanBrakingG" -> m.braking().meanBrakingG();
            case "collapseDegPerS" -> m.braking().collapseDegPerS();
            case "trunkFlexionDeg" -> of(m.posture().trunkFlexion(), part);
            case "trunkLeanDeg" -> of(m.posture().trunkLean(), part);
            case "pelvicRotationDeg" -> of(m.posture().pelvicRotation(), part);
            case "pelvicTiltDeg" -> of(m.posture().pelvicTilt(), part);
            case "pelvicObliquityDeg" -> of(m.posture().pelvicObliquity(), part);
            case "twistDeg" -> of(m.posture().twist(), part);
            case "spineFlexionDeg" -> of(m.posture().spineFlexion(), part);
            case "lateralShiftM" -> of(m.balance().lateralShift(), part);
            case "foreAftShiftM" -> of(m.balance().foreAftShift(), part);
            case "overFeetM" -> of(m.balance().overFeet(), part);
            case "stepsAfter" -> whole(m.balance().stepsAfter());
            case "sigma" -> of(m.sigma(), part);
            default -> throw none(name);
        };
    }

    private static @Nullable Double of(@Nullable Estimate estimate, String part) {
        if (estimate == null) {
            return null;
        }
        return switch (part) {
            case "" -> Double.valueOf(estimate.value());
            case "sigma" -> estimate.sigma();
            default -> throw none(part);
        };
    }

    private static @Nullable Double of(@Nullable Excursion angle, String part) {
        if (angle == null) {
            return null;
        }
        return switch (part) {
            case "contact" -> Double.valueOf(angle.contact());
            case "peak" -> Double.valueOf(angle.peak());
            case "lowest" -> angle.lowest();
            case "max" -> Double.valueOf(angle.max());
            case "change" -> Double.valueOf(angle.change());
            case "sigma" -> Double.valueOf(angle.sigma());
            default -> throw none(part);
        };
    }

    private static @Nullable Double of(@Nullable OverFeet feet, String part) {
        if (feet == null) {
            return null;
        }
        return switch (part) {
            case "foreAftContact" -> feet.foreAftContact();
            case "foreAftLowest" -> feet.foreAftLowest();
            case "lateralContact" -> feet.lateralContact();
            case "lateralLowest" -> feet.lateralLowest();
            case "sigmaForeAft" -> feet.sigmaForeAft();
            case "sigmaLateral" -> feet.sigmaLateral();
            default -> throw none(part);
        };
    }

    private static @Nullable Double of(Sigma sigma, String part) {
        return switch (part) {
            case "contactS" -> Double.valueOf(sigma.contactS());
            case "flightS" -> sigma.flightS();
            case "impactSpeedMS" -> sigma.impactSpeedMS();
            case "dropHeightM" -> sigma.dropHeightM();
            case "peakG" -> Double.valueOf(sigma.peakG());
            case "depthM" -> sigma.depthM();
            case "meanBrakingG" -> sigma.meanBrakingG();
            case "collapseDegPerS" -> sigma.collapseDegPerS();
            default -> throw none(part);
        };
    }

    private static @Nullable Double whole(@Nullable Integer value) {
        return value == null ? null : Double.valueOf(value);
    }

    private static IllegalArgumentException none(String name) {
        return new IllegalArgumentException("there is no measure " + name);
    }
}

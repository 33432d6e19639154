package evenfall.report.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All measures in the order results list them. */
public final class MeasureList {

    private static final List<Measure> ALL = build();

    private MeasureList() {}

    /** All measures, in the order of the columns of a table. */
    public static List<Measure> all() {
        return ALL;
    }

    /** The measure of that name; empty for an unknown one. {@code lateralShiftM.value} is read as {@code lateralShiftM}. */
    public static Optional<Measure> named(String name) {
        String plain = name.endsWith(".value") ? name.substring(0, name.length() - ".value".length()) : name;
        return ALL.stream().filter(measure -> measure.name().equals(plain)).findFirst();
    }

    /** What states one standard deviation of a measure's error; empty where nothing does. */
    public static Optional<Measure> sigmaOf(Measure measure) {
        String name = measure.name();
        int dot = name.indexOf('.');
        String sigma = name.startsWith("overFeetM.foreAft")
                ? "overFeetM.sigmaForeAft"
                : name.startsWith("overFeetM.lateral")
                        ? "overFeetM.sigmaLateral"
                        : name.endsWith("ShiftM")
                                ? name + ".sigma"
                                : dot > 0 ? name.substring(0, dot) + ".sigma" : "sigma." + name;
        return named(sigma);
    }

    private static List<Measure> build() {
        List<Measure> list = new ArrayList<>();
        compared(list, "flightS", "s");
        compared(list, "impactSpeedMS", "m/s");
        compared(list, "dropHeightM", "m");
        compared(list, "peakG", "g");
        compared(list, "peakUpperBackG", "g");
        estimate(list, "peakEstimatedG", "g", MeasureKind.DETAIL);
        compared(list, "riseMs", "ms");
        compared(list, "loadingRateGPerS", "g/s");
        compared(list, "depthM", "m");
        compared(list, "brakingS", "s");
        compared(list, "meanBrakingG", "g");
        compared(list, "collapseDegPerS", "deg/s");
        angle(list, "trunkFlexionDeg");
        angle(list, "trunkLeanDeg");
        angle(list, "pelvicRotationDeg");
        angle(list, "pelvicTiltDeg");
        angle(list, "pelvicObliquityDeg");
        angle(list, "twistDeg");
        angle(list, "spineFlexionDeg");
        estimate(list, "lateralShiftM", "m", MeasureKind.COMPARED);
        estimate(list, "foreAftShiftM", "m", MeasureKind.COMPARED);
        overFeet(list);
        compared(list, "stepsAfter", "");
        sigma(list, "contactS", "s");
        sigma(list, "flightS", "s");
        sigma(list, "impactSpeedMS", "m/s");
        sigma(list, "dropHeightM", "m");
        sigma(list, "peakG", "g");
        sigma(list, "depthM", "m");
        sigma(list, "meanBrakingG", "g");
        sigma(list, "collapseDegPerS", "deg/s");
        return List.copyOf(list);
    }

    private static void angle(List<Measure> list, String group) {
        for (String part : List.of("contact", "peak", "lowest", "max")) {
            list.add(new Measure(group + "." + part, "deg", MeasureKind.DETAIL));
        }
        list.add(new Measure(group + ".change", "deg", MeasureKind.COMPARED));
        list.add(new Measure(group + ".sigma", "deg", MeasureKind.SIGMA));
    }

    /** A value and, behind it, what states its error. */
    private static void estimate(List<Measure> list, String name, String unit, MeasureKind kind) {
        list.add(new Measure(name, unit, kind));
        list.add(new Measure(name + ".sigma", unit, MeasureKind.SIGMA));
    }

    private static void overFeet(List<Measure> list) {
        for (String part : List.of("foreAftContact", "foreAftLowest", "lateralContact", "lateralLowest")) {
            list.add(new Measure("overFeetM." + part, "m", MeasureKind.COMPARED));
        }
        list.add(new Measure("overFeetM.sigmaForeAft", "m", MeasureKind.SIGMA));
        list.add(new Measure("overFeetM.sigmaLateral", "m", MeasureKind.SIGMA));
    }

    private static void compared(List<Measure> list, String name, String unit) {
        list.add(new Measure(name, unit, MeasureKind.COMPARED));
    }

    private static void sigma(List<Measure> list, String name, String unit) {
        list.add(new Measure("sigma." + name, unit, MeasureKind.SIGMA));
    }
}

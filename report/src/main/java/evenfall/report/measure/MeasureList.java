package evenfall.report.measure;

import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

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
        compared(list, "flightS", "s", m -> m.fall().flightS());
        compared(list, "impactSpeedMS", "m/s", m -> m.fall().impactSpeedMS());
        compared(list, "dropHeightM", "m", m -> m.fall().dropHeightM());
        compared(list, "peakG", "g", m -> m.impact().peakG());
        compared(list, "peakUpperBackG", "g", m -> m.impact().peakUpperBackG());
        estimate(
                list, "peakEstimatedG", "g", MeasureKind.DETAIL, m -> m.impact().peakEstimatedG());
        compared(list, "riseMs", "ms", m -> m.impact().riseMs());
        compared(list, "loadingRateGPerS", "g/s", m -> m.impact().loadingRateGPerS());
        compared(list, "depthM", "m", m -> m.braking().depthM());
        compared(list, "brakingS", "s", m -> m.braking().brakingS());
        compared(list, "meanBrakingG", "g", m -> m.braking().meanBrakingG());
        compared(list, "collapseDegPerS", "deg/s", m -> m.braking().collapseDegPerS());
        angle(list, "trunkFlexionDeg", Posture::trunkFlexion);
        angle(list, "trunkLeanDeg", Posture::trunkLean);
        angle(list, "pelvicRotationDeg", Posture::pelvicRotation);
        angle(list, "pelvicTiltDeg", Posture::pelvicTilt);
        angle(list, "pelvicObliquityDeg", Posture::pelvicObliquity);
        angle(list, "twistDeg", Posture::twist);
        angle(list, "spineFlexionDeg", Posture::spineFlexion);
        estimate(
                list,
                "lateralShiftM",
                "m",
                MeasureKind.COMPARED,
                m -> m.balance().lateralShift());
        estimate(
                list,
                "foreAftShiftM",
                "m",
                MeasureKind.COMPARED,
                m -> m.balance().foreAftShift());
        overFeet(list);
        compared(list, "stepsAfter", "", m -> whole(m.balance().stepsAfter()));
        sigma(list, "contactS", "s", m -> m.sigma().contactS());
        sigma(list, "flightS", "s", m -> m.sigma().flightS());
        sigma(list, "impactSpeedMS", "m/s", m -> m.sigma().impactSpeedMS());
        sigma(list, "dropHeightM", "m", m -> m.sigma().dropHeightM());
        sigma(list, "peakG", "g", m -> m.sigma().peakG());
        sigma(list, "depthM", "m", m -> m.sigma().depthM());
        sigma(list, "meanBrakingG", "g", m -> m.sigma().meanBrakingG());
        sigma(list, "collapseDegPerS", "deg/s", m -> m.sigma().collapseDegPerS());
        return List.copyOf(list);
    }

    private static void angle(List<Measure> list, String group, Function<Posture, @Nullable Excursion> reader) {
        part(list, group + ".contact", MeasureKind.DETAIL, reader, Excursion::contact);
        part(list, group + ".peak", MeasureKind.DETAIL, reader, Excursion::peak);
        part(list, group + ".lowest", MeasureKind.DETAIL, reader, Excursion::lowest);
        part(list, group + ".max", MeasureKind.DETAIL, reader, Excursion::max);
        part(list, group + ".change", MeasureKind.COMPARED, reader, Excursion::change);
        part(list, group + ".sigma", MeasureKind.SIGMA, reader, Excursion::sigma);
    }

    private static void part(
            List<Measure> list,
            String name,
            MeasureKind kind,
            Function<Posture, @Nullable Excursion> group,
            Function<Excursion, @Nullable Double> part) {
        list.add(new Measure(name, "deg", kind, m -> {
            Excursion excursion = group.apply(m.posture());
            return excursion == null ? null : part.apply(excursion);
        }));
    }

    /** A value and, behind it, what states its error. */
    private static void estimate(
            List<Measure> list,
            String name,
            String unit,
            MeasureKind kind,
            Function<Measures, @Nullable Estimate> reader) {
        list.add(new Measure(name, unit, kind, m -> {
            Estimate estimate = reader.apply(m);
            return estimate == null ? null : estimate.value();
        }));
        list.add(new Measure(name + ".sigma", unit, MeasureKind.SIGMA, m -> {
            Estimate estimate = reader.apply(m);
            return estimate == null ? null : estimate.sigma();
        }));
    }

    private static void overFeet(List<Measure> list) {
        place(list, "foreAftContact", MeasureKind.COMPARED, OverFeet::foreAftContact);
        place(list, "foreAftLowest", MeasureKind.COMPARED, OverFeet::foreAftLowest);
        place(list, "lateralContact", MeasureKind.COMPARED, OverFeet::lateralContact);
        place(list, "lateralLowest", MeasureKind.COMPARED, OverFeet::lateralLowest);
        place(list, "sigmaForeAft", MeasureKind.SIGMA, OverFeet::sigmaForeAft);
        place(list, "sigmaLateral", MeasureKind.SIGMA, OverFeet::sigmaLateral);
    }

    private static void place(
            List<Measure> list, String part, MeasureKind kind, Function<OverFeet, @Nullable Double> reader) {
        list.add(new Measure("overFeetM." + part, "m", kind, m -> {
            OverFeet overFeet = m.balance().overFeet();
            return overFeet == null ? null : reader.apply(overFeet);
        }));
    }

    private static void compared(
            List<Measure> list, String name, String unit, Function<Measures, @Nullable Double> reader) {
        list.add(new Measure(name, unit, MeasureKind.COMPARED, reader));
    }

    private static void sigma(
            List<Measure> list, String name, String unit, Function<Measures, @Nullable Double> reader) {
        list.add(new Measure("sigma." + name, unit, MeasureKind.SIGMA, reader));
    }

    private static @Nullable Double whole(@Nullable Integer value) {
        return value == null ? null : Double.valueOf(value);
    }
}

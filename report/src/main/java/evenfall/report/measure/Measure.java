package evenfall.report.measure;

import evenfall.fusion.landing.Measures;
import org.jspecify.annotations.Nullable;

/**
 * One figure measured of a landing, by the name results give it.
 *
 * @param name JSON name with groups flattened, such as {@code pelvicRotationDeg.change}
 * @param unit {@code s}, {@code ms}, {@code m}, {@code m/s}, {@code g}, {@code g/s}, {@code deg}, {@code deg/s} or empty
 * @param kind whether it is compared over weeks, or only says how sure or where
 */
public record Measure(String name, String unit, MeasureKind kind) {

    /** The value in {@code measures}, or null where it could not be measured or is not finite. */
    public @Nullable Double of(Measures measures) {
        Double value = MeasureReader.read(name, measures);
        return value == null || !Double.isFinite(value) ? null : value;
    }
}

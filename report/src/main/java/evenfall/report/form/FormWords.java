package evenfall.report.form;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Measures in words, sides written out. */
final class FormWords {

    /** Words for a signed angle. */
    interface Turned {
        String of(double degrees);
    }

    private FormWords() {}

    static String pelvisTurned(double degrees) {
        String side = degrees > 0 ? "left" : "right";
        return "pelvis turned " + side + " " + degrees(Math.abs(degrees)) + ", " + side + " hip behind";
    }

    static String pelvisDropped(double degrees) {
        return "pelvis dropped on the " + (degrees > 0 ? "right" : "left") + " " + degrees(Math.abs(degrees));
    }

    static String trunkLeaned(double degrees) {
        return "trunk leaned " + (degrees > 0 ? "right" : "left") + " " + degrees(Math.abs(degrees));
    }

    static String twisted(double degrees) {
        return "upper back twisted " + (degrees > 0 ? "left" : "right") + " against the pelvis "
                + degrees(Math.abs(degrees));
    }

    static String besideFeet(@Nullable Double metres) {
        double value = metres == null ? 0 : metres;
        return "pelvis " + metres(Math.abs(value)) + " to the " + (value > 0 ? "left" : "right")
                + " of the feet at the lowest point";
    }

    static String behindFeet(@Nullable Double metres) {
        return "pelvis " + metres(metres) + " behind the feet at the lowest point";
    }

    static String stepsBack(@Nullable Double steps) {
        long count = steps == null ? 0 : Math.round(steps);
        return count == 1 ? "one step back after landing" : count + " steps back after landing";
    }

    static String degrees(@Nullable Double value) {
        return format("%.1f°", value);
    }

    static String degreeLimit(double value) {
        return value == Math.rint(value) ? format("%.0f°", value) : degrees(value);
    }

    static String degreesPerSecond(@Nullable Double value) {
        return format("%.0f deg/s", value);
    }

    static String metres(@Nullable Double value) {
        return format("%.2f m", value);
    }

    static String g(@Nullable Double value) {
        return format("%.1f g", value);
    }

    private static String format(String pattern, @Nullable Double value) {
        return String.format(Locale.ROOT, pattern, value == null ? 0.0 : value);
    }
}

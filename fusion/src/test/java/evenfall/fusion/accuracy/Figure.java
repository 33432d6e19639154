package evenfall.fusion.accuracy;

import java.util.Locale;

/** What errors are counted of. */
enum Figure {
    CONTACT("contact s", "contact", "ms", 1000, 2, 0.0003),
    FLIGHT("flight s", "flight", "ms", 1000, 1, 0.001),
    LOWEST("lowest s", "lowest", "ms", 1000, 0, 0.01),
    SETTLED("settled s", "settled", "ms", 1000, 0, 0.02),
    SPEED("speed m/s", "impact speed", "m/s", 1, 3, 0.004),
    DROP("drop m", "drop height", "cm", 100, 2, 0.002),
    DEPTH("depth m", "depth", "cm", 100, 2, 0.001),
    BRAKING("braking g", "mean braking", "g", 1, 3, 0.02),
    PEAK("peak %", "recorded peak", "%", 1, 2, 0.01),
    BODY_PEAK("body peak %", "peak of the body", "%", 1, 1, 0.3),
    COLLAPSE("collapse deg/s", "collapse rate", "deg/s", 1, 1, 0.7),
    ROTATION("d rotation deg", "change of pelvic rotation", "deg", 1, 2, 0.03),
    OBLIQUITY("d obliquity deg", "change of obliquity", "deg", 1, 2, 0.03),
    TILT("d tilt deg", "change of tilt", "deg", 1, 2, 0.03),
    FLEXION("d flexion deg", "change of trunk flexion", "deg", 1, 2, 0.03),
    LEAN("d lean deg", "change of trunk lean", "deg", 1, 2, 0.03),
    TWIST("d twist deg", "change of twist", "deg", 1, 2, 0.03),
    SPINE("d spine deg", "change of spine flexion", "deg", 1, 2, 0.03),
    TILT_AT_CONTACT("tilt at contact", "tilt at contact", "deg", 1, 2, 0.03),
    OBLIQUITY_AT_CONTACT("obliquity at contact", "obliquity at contact", "deg", 1, 2, 0.03),
    FLEXION_AT_CONTACT("flexion at contact", "flexion at contact", "deg", 1, 2, 0.03),
    LEAN_AT_CONTACT("lean at contact", "lean at contact", "deg", 1, 2, 0.03),
    SHIFT_LEFT("shift left m", "shift to the side", "cm", 100, 2, 0.0005),
    SHIFT_FORWARD("shift fwd m", "shift fore and aft", "cm", 100, 2, 0.0005),
    OVER_FORWARD("over fwd m", "over the feet fore and aft", "cm", 100, 2, 0.001),
    OVER_LEFT("over left m", "over the feet sideways", "cm", 100, 2, 0.001),
    OVER_FORWARD_LOW("over fwd low m", "the same at lowest, fore and aft", "cm", 100, 2, 0.001),
    OVER_LEFT_LOW("over left low m", "the same at lowest, sideways", "cm", 100, 2, 0.001),
    CLOCK("clock ms", "clocks", "ms", 1, 2, 0.2),
    LANDINGS("landings", "landings found", "", 1, 0, 0),
    CLIPPED("clipped", "said to be clipped", "", 1, 0, 0),
    FEET_MOVED("feet moved", "said that feet moved", "", 1, 0, 0),
    STEPPED("stepped", "said that a step came", "", 1, 0, 0),
    OTHER_SIDE("other side", "change told to the farther side", "", 1, 0, 0);

    private final String code;
    private final String words;
    private final String unit;
    private final double scale;
    private final int decimals;
    private final double negligible;

    Figure(String code, String words, String unit, double scale, int decimals, double negligible) {
        this.code = code;
        this.words = words;
        this.unit = unit;
        this.scale = scale;
        this.decimals = decimals;
        this.negligible = negligible;
    }

    /** Its name in the tables of bounds, in which it stands in the unit that it names. */
    String code() {
        return code;
    }

    /** Its name and unit as the page shows them. */
    String words() {
        return unit.isEmpty() ? words : words + ", " + unit;
    }

    /** The same without saying that it is a change, which angles always are where they stand beside other things. */
    String briefly() {
        return words().replace("change of ", "");
    }

    /** A value as the page shows it. */
    String shown(double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", scaled(value));
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    /** A value in the unit of the page. */
    double scaled(double value) {
        return scale * value;
    }

    /** A change of the error that does not matter, in the unit of the table of bounds. */
    double negligible() {
        return negligible;
    }

    String unit() {
        return unit;
    }

    /** Whether it is a yes or a number of things, not a size. */
    boolean counts() {
        return unit.isEmpty();
    }

    static Figure ofCode(String code) {
        for (Figure figure : values()) {
            if (figure.code.equals(code)) {
                return figure;
            }
        }
        throw new IllegalArgumentException("no figure " + code);
    }
}

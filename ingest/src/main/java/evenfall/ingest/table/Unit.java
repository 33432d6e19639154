package evenfall.ingest.table;

import evenfall.ingest.recording.Gravity;
import java.util.Locale;
import java.util.Optional;

/** A unit of a column and its factor to SI. Standard gravity is exactly 9.80665 m/s² (ISO 80000-3). */
enum Unit {
    SECOND(Quantity.TIME, 1, "s", "sec", "secs", "second", "seconds"),
    MILLISECOND(Quantity.TIME, 1e-3, "ms", "msec", "msecs", "millis", "milliseconds", "millisecond", "millisec"),
    MICROSECOND(Quantity.TIME, 1e-6, "us", "usec", "usecs", "micros", "microseconds", "microsecond", "microsec", "mus"),
    NANOSECOND(Quantity.TIME, 1e-9, "ns", "nsec", "nanos", "nanoseconds", "nanosecond"),
    MINUTE(Quantity.TIME, 60, "min", "minute", "minutes"),
    ISO_8601(Quantity.TIME, 1, "iso", "iso8601", "iso-8601", "utc", "datetime", "isotime", "isodate"),
    /** A count of samples; needs a rate. */
    SAMPLES(Quantity.TIME, 1, "samples", "sample", "count", "counts", "ticks", "frames"),
    STANDARD_GRAVITY(
            Quantity.ACCELERATION,
            Gravity.STANDARD,
            "g",
            "gs",
            "g0",
            "gn",
            "gee",
            "gravity",
            "gravities",
            "gforce",
            "g-force"),
    MILLI_GRAVITY(Quantity.ACCELERATION, Gravity.STANDARD / 1000, "mg", "milligee", "millig"),
    METRE_PER_SECOND_SQUARED(
            Quantity.ACCELERATION,
            1,
            "ms2",
            "ms-2",
            "mps2",
            "mpss",
            "mss",
            "mpersecond2",
            "mpers2",
            "mpersec2",
            "msec2",
            "meterspersecondsquared",
            "metrespersecondsquared",
            "meterpersecondsquared",
            "metrepersecondsquared",
            "meterspersecond2",
            "metrespersecond2",
            "meterssecond2",
            "metressecond2",
            "metersecond2",
            "metresecond2",
            "meterss2",
            "metress2",
            "meters2",
            "metres2",
            "meterssec2",
            "metressec2",
            "meterspersec2",
            "meterspers2",
            "metrespersec2",
            "metrespers2",
            "meterssecondsquared",
            "metressecondsquared"),
    CENTIMETRE_PER_SECOND_SQUARED(Quantity.ACCELERATION, 1e-2, "cms2", "gal"),
    MILLIMETRE_PER_SECOND_SQUARED(Quantity.ACCELERATION, 1e-3, "mms2"),
    DEGREE_PER_SECOND(
            Quantity.TURN_RATE,
            Unit.DEGREE,
            "dps",
            "degs",
            "degs-1",
            "degsec",
            "degps",
            "degpersec",
            "degpers",
            "degpersecond",
            "degreespersecond",
            "degreepersecond",
            "degreess",
            "degrees",
            "degreessec",
            "degsecond",
            "degreesecond",
            "degreessecond",
            "degreespersec"),
    MILLI_DEGREE_PER_SECOND(
            Quantity.TURN_RATE, Unit.DEGREE / 1000, "mdps", "mdegs", "mdegs-1", "mdegps", "mdegsec", "millidps"),
    RADIAN_PER_SECOND(
            Quantity.TURN_RATE,
            1,
            "rads",
            "rads-1",
            "radsec",
            "radps",
            "rps",
            "radpersec",
            "radpers",
            "radpersecond",
            "radianspersecond",
            "radianpersecond",
            "radianss",
            "radsecond",
            "radiansecond",
            "radianssecond",
            "radianssec"),
    MILLI_RADIAN_PER_SECOND(Quantity.TURN_RATE, 1e-3, "mrads", "mrads-1", "mradsec", "mradps");

    private static final double DEGREE = Math.PI / 180;

    private final Quantity quantity;
    private final double toSi;
    private final String spellings;

    Unit(Quantity quantity, double toSi, String... spellings) {
        this.quantity = quantity;
        this.toSi = toSi;
        this.spellings = " " + String.join(" ", spellings) + " ";
    }

    Quantity quantity() {
        return quantity;
    }

    /** What one of this unit is in s, m/s² or rad/s. */
    double toSi() {
        return toSi;
    }

    /**
     * Reads a unit in any usual spelling: {@code m/s^2}, {@code m/s²}, {@code m·s⁻²}, {@code °/s}, {@code deg s-1},
     * {@code µs}.
     *
     * @return empty if the text is no unit of this quantity
     */
    static Optional<Unit> parse(Quantity quantity, String text) {
        String plain = plain(text);
        for (Unit unit : values()) {
            if (unit.quantity == quantity && unit.spellings.contains(" " + plain + " ")) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** A unit of any quantity by its text; empty when it is none. */
    static Optional<Unit> parse(String text) {
        for (Quantity quantity : Quantity.values()) {
            Optional<Unit> unit = parse(quantity, text);
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        String lower = text.toLowerCase(Locale.ROOT).replace("**", "");
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            switch (c) {
                case '°', 'º' -> plain.append("deg");
                case 'µ', 'μ' -> plain.append('u');
                case '²' -> plain.append('2');
                case '¹' -> plain.append('1');
                case '⁻', '−' -> plain.append('-');
                default -> {
                    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-') {
                        plain.append(c);
                    }
                }
            }
        }
        String found = plain.toString();
        return found.equals("ms-2") || found.equals("m-2s") ? "ms2" : found.equals("date-time") ? "datetime" : found;
    }
}

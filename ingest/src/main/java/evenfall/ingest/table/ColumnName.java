package evenfall.ingest.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the name of a column says: quantity, axis, unit, and which of several sensors of a kind.
 *
 * @param text the name as it stands in the file
 * @param quantity what is measured
 * @param axis 0, 1, 2 for x, y, z; -1 for time and others
 * @param unit the unit, or null if the name does not say
 * @param set words that tell one sensor of a kind from another ({@code 2}, {@code raw}); empty for the plain one
 */
record ColumnName(
        String text, Quantity quantity, int axis, @Nullable Unit unit, String set) {

    private static final Pattern BRACKET = Pattern.compile("[(\\[{<]([^)\\]}>]*)[)\\]}>]?");
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");

    /** What stands between words. */
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}°²µ⁻]+");

    /** A unit that holds a slash, dot or power sign, at the end of a name. */
    private static final Pattern RATIO = Pattern.compile(
            "(?<=[\\s_.,:-]|^)(m?(?:deg|rad|°|º|dps|m|cm|mm|degrees|radians))\\s*[/·*]\\s*(s(?:ec(?:ond)?)?)\\s*(\\^?-?\\*{0,2}[2²]?|/s)\\s*$",
            Pattern.CASE_INSENSITIVE);

    /** "ax", "accx", "gyroz", "acc2x", "ax1": a quantity, perhaps a number, an axis, perhaps a number. */
    private static final Pattern COMPACT = Pattern.compile("([\\p{L}]*?)(\\d*)([xyz]?)(\\d*)");

    private static final Set<String> ACCELERATION = Set.of(
            "a",
            "acc",
            "accel",
            "accelero",
            "acceleration",
            "accelerations",
            "accelerometer",
            "accelerometers",
            "accelerator",
            "beschleunigung",
            "specificforce",
            "force");
    private static final Set<String> TURN_RATE = Set.of(
            "g",
            "gyr",
            "gyro",
            "gyros",
            "gyroscope",
            "gyroscopes",
            "w",
            "omega",
            "angularvelocity",
            "angularrate",
            "angvel",
            "angular",
            "turnrate",
            "rotationrate",
            "rot",
            "rotation",
            "rate",
            "gyrorate",
            "gyrrate",
            "drehrate",
            "winkelgeschwindigkeit",
            "drehgeschwindigkeit",
            "ω",
            "ang");
    private static final Set<String> TIME = Set.of(
            "t",
            "time",
            "timestamp",
            "timestamps",
            "times",
            "ts",
            "stamp",
            "clock",
            "elapsed",
            "epoch",
            "epoc",
            "unixtime",
            "datetime",
            "date",
            "sampletime",
            "timer",
            "localtime",
            "devicetime",
            "uptime",
            "unix",
            "zeit",
            "uhrzeit",
            "zeitstempel",
            "tms",
            "tus");
    private static final Set<String> COUNT =
            Set.of("sample", "samples", "counter", "index", "frame", "packet", "seq", "sequence", "n", "tick", "ticks");
    /** Words that say nothing about what is measured. */
    private static final Set<String> FILLER = Set.of(
            "sensor",
            "imu",
            "data",
            "value",
            "axis",
            "in",
            "calibrated",
            "cal",
            "column",
            "reading",
            "signal",
            "velocity",
            "rate",
            "vel",
            "component",
            "body",
            "iso",
            "utc",
            "since",
            "start",
            "device",
            "unix",
            "1",
            "stamp",
            "elapsed",
            "time",
            "linearacc",
            "angular",
            "turn",
            "specific",
            "force",
            "host",
            "local");
    /** Words that make a column something else than a plain accelerometer or gyroscope. */
    private static final Set<String> FOREIGN = Set.of(
            "mag",
            "magn",
            "magnetometer",
            "magnetic",
            "m",
            "b",
            "temp",
            "temperature",
            "pressure",
            "quat",
            "quaternion",
            "q",
            "euler",
            "roll",
            "pitch",
            "yaw",
            "linear",
            "user",
            "gravity",
            "grav",
            "earth",
            "world",
            "global",
            "free",
            "lin",
            "bias",
            "std",
            "var",
            "sigma",
            "norm",
            "filtered",
            "angle",
            "pos",
            "position",
            "speed",
            "offset",
            "truth",
            "ref",
            "status",
            "flag",
            "clip",
            "clipped");

    private static final Map<String, Integer> AXES = Map.of("x", 0, "y", 1, "z", 2);
    /** Axes by their place in an array: {@code acc[0]}. */
    private static final Map<String, String> PLACES = Map.of("0", "x", "1", "y", "2", "z");

    /** Reads the name of a column; a name that means nothing here is {@link Quantity#OTHER}. */
    static ColumnName parse(String text) {
        String name = text.strip();
        String bracket = null;
        StringBuilder outside = new StringBuilder();
        Matcher matcher = BRACKET.matcher(name);
        int from = 0;
        while (matcher.find()) {
            boolean unit = Unit.parse(matcher.group(1)).isPresent();
            bracket = unit ? matcher.group(1) : bracket;
            // What is no unit belongs to the name: "acc x (raw)", "acc[0]".
            String inside = matcher.group().startsWith("[")
                    ? PLACES.getOrDefault(matcher.group(1), matcher.group(1))
                    : matcher.group(1);
            outside.append(name, from, matcher.start()).append(unit ? " " : " " + inside + " ");
            from = matcher.end();
        }
        outside.append(name.substring(from));
        return new Reading(text.strip(), outside.toString(), bracket).result();
    }

    private static ColumnName other(String text) {
        return new ColumnName(text, Quantity.OTHER, -1, null, "");
    }

    /** One attempt to make sense of a name. */
    private static final class Reading {
        private final String text;
        private final @Nullable String bracket;
        private final List<String> words = new ArrayList<>();

        Reading(String text, String outside, @Nullable String bracket) {
            this.text = text;
            this.bracket = bracket;
            // Such a unit is kept in one piece.
            String unitless = outside;
            String tail = "";
            Matcher slash = RATIO.matcher(outside);
            if (slash.find()) {
                tail = slash.group(1) + slash.group(2) + (slash.group(3).isEmpty() ? "" : "2");
                unitless = outside.substring(0, slash.start());
            }
            for (String part : BETWEEN.split(unitless, -1)) {
                for (String hump : HUMP.split(part, -1)) {
                    addWord(hump.toLowerCase(Locale.ROOT));
                }
            }
            if (!tail.isEmpty()) {
                words.add(tail.toLowerCase(Locale.ROOT));
            }
        }

        private void addWord(String word) {
            if (word.isEmpty()) {
                return;
            }
            Matcher compact = COMPACT.matcher(word);
            if (compact.matches()
                    && (ACCELERATION.contains(compact.group(1))
                            || TURN_RATE.contains(compact.group(1))
                            || (compact.group(1).isEmpty() && !compact.group(3).isEmpty())
                            || (FOREIGN.contains(compact.group(1))
                                    && !compact.group(3).isEmpty()))) {
                for (int i = 1; i <= 4; i++) {
                    if (!compact.group(i).isEmpty()) {
                        words.add(compact.group(i));
                    }
                }
            } else {
                words.add(word);
            }
        }

        ColumnName result() {
            if (words.isEmpty()) {
                return other(text);
            }
            int axis = -1;
            for (int i = words.size() - 1; i >= 0; i--) {
                Integer found = AXES.get(words.get(i));
                if (found != null) {
                    axis = found;
                    words.remove(i);
                    break;
                }
            }
            return axis >= 0 ? vector(axis) : time();
        }

        private ColumnName vector(int axis) {
            Quantity quantity = Quantity.OTHER;
            for (int i = 0; i < words.size(); i++) {
                String word = words.get(i);
                String pair = i + 1 < words.size() ? word + words.get(i + 1) : word;
                boolean turn = TURN_RATE.contains(word) || TURN_RATE.contains(pair);
                // In "angular acceleration" the second word counts; in "acc g x" the first.
                if (turn || ACCELERATION.contains(word)) {
                    if (word.equals("angular") && pair.startsWith("angularacc")) {
                        return other(text);
                    }
                    quantity = turn ? Quantity.TURN_RATE : Quantity.ACCELERATION;
                    words.remove(i);
                    break;
                }
            }
            if (quantity == Quantity.OTHER || unitOfTheOther(quantity)) {
                return other(text);
            }
            Unit unit = unit(quantity);
            StringBuilder set = new StringBuilder();
            for (String word : words) {
                if (FOREIGN.contains(word)) {
                    return other(text);
                }
                boolean said = quantity == Quantity.TURN_RATE ? TURN_RATE.contains(word) : ACCELERATION.contains(word);
                if (!said && !FILLER.contains(word)) {
                    set.append(set.isEmpty() ? "" : " ").append(word);
                }
            }
            return new ColumnName(text, quantity, axis, unit, set.toString());
        }

        /** Whether the bracket says another quantity: {@code gx (m/s2)} is gravity, no turn rate. */
        private boolean unitOfTheOther(Quantity quantity) {
            Quantity another = quantity == Quantity.TURN_RATE ? Quantity.ACCELERATION : Quantity.TURN_RATE;
            return bracket != null
                    && Unit.parse(quantity, bracket).isEmpty()
                    && Unit.parse(another, bracket).isPresent();
        }

        private ColumnName time() {
            for (int i = 0; i < words.size(); i++) {
                String word = words.get(i);
                boolean count = COUNT.contains(word);
                if (TIME.contains(word) || count) {
                    words.remove(i);
                    if (word.equals("tms") || word.equals("tus")) {
                        words.add(word.substring(1));
                    }
                    Unit unit = unit(Quantity.TIME);
                    if (unit == null && count && words.stream().noneMatch(TIME::contains)) {
                        unit = Unit.SAMPLES;
                    }
                    words.removeIf(FILLER::contains);
                    words.removeIf(TIME::contains);
                    return new ColumnName(text, Quantity.TIME, -1, unit, String.join(" ", words));
                }
            }
            // "ms" or "seconds" alone is a time as well.
            if (words.size() == 1 && bracket == null) {
                Optional<Unit> unit = Unit.parse(Quantity.TIME, words.get(0));
                if (unit.isPresent() && unit.get() != Unit.SAMPLES) {
                    return new ColumnName(text, Quantity.TIME, -1, unit.get(), "");
                }
            }
            return other(text);
        }

        /** Finds the unit in the bracket or in the words left over, and takes it out of them. */
        private @Nullable Unit unit(Quantity quantity) {
            if (bracket != null) {
                Optional<Unit> unit = Unit.parse(quantity, bracket);
                if (unit.isPresent()) {
                    return unit.get();
                }
            }
            for (int length = Math.min(4, words.size()); length >= 1; length--) {
                for (int from = words.size() - length; from >= 0; from--) {
                    Optional<Unit> unit = Unit.parse(quantity, String.join("", words.subList(from, from + length)));
                    if (unit.isPresent()) {
                        words.subList(from, from + length).clear();
                        return unit.get();
                    }
                }
            }
            return null;
        }
    }
}

package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.words.Figures;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Measures by name as a person reads them: what it is, with its unit, and its side in words in place of a sign. */
final class MeasureWords {

    private static final Words WORDS = Words.beside(MeasureWords.class);

    /** The words for more and less than zero, for measures that have a side. */
    private static final Map<String, Ways> SIDED = Map.ofEntries(
            Map.entry("trunkFlexionDeg.change", Ways.FORWARD_BACK),
            Map.entry("trunkLeanDeg.change", Ways.RIGHT_LEFT),
            Map.entry("pelvicRotationDeg.change", Ways.LEFT_RIGHT),
            Map.entry("pelvicTiltDeg.change", Ways.FORWARD_BACK),
            Map.entry("pelvicObliquityDeg.change", Ways.RIGHT_LEFT),
            Map.entry("twistDeg.change", Ways.LEFT_RIGHT),
            Map.entry("spineFlexionDeg.change", Ways.FORWARD_BACK),
            Map.entry("lateralShiftM", Ways.LEFT_RIGHT),
            Map.entry("foreAftShiftM", Ways.FORWARD_BACK),
            Map.entry("overFeetM.foreAftContact", Ways.BEFORE_BEHIND),
            Map.entry("overFeetM.foreAftLowest", Ways.BEFORE_BEHIND),
            Map.entry("overFeetM.lateralContact", Ways.LEFT_RIGHT),
            Map.entry("overFeetM.lateralLowest", Ways.LEFT_RIGHT));

    private MeasureWords() {}

    private enum Ways {
        LEFT_RIGHT,
        RIGHT_LEFT,
        FORWARD_BACK,
        BEFORE_BEHIND;

        String of(double value) {
            String[] words = name().toLowerCase(Locale.ROOT).split("_", 2);
            return words[value > 0 ? 0 : 1];
        }
    }

    /** What the measure is; its own name if there are no words for it. */
    static String label(String measure) {
        return WORDS.knows("measure." + measure) ? WORDS.say("measure." + measure) : measure;
    }

    /**
     * A value with unit and side.
     *
     * @param unit as {@link evenfall.report.measure.Measure#unit} has it
     */
    static String value(String measure, String unit, @Nullable Double value) {
        if (value == null) {
            return Cells.MISSING;
        }
        int decimals = decimals(unit);
        Ways ways = SIDED.get(measure);
        if (ways == null) {
            return WORDS.say("unit." + unit, Figures.fixed(value, decimals));
        }
        String size = Figures.size(value, decimals);
        String text = WORDS.say("unit." + unit, size);
        return size.equals(Figures.size(0.0, decimals)) ? text : text + " " + ways.of(value);
    }

    /** How large a value is, with its unit and without its side. */
    static String size(String unit, double value) {
        return WORDS.say("unit." + unit, Figures.size(value, decimals(unit)));
    }

    /** A change a week; a side in words says which way. */
    static String aWeek(String measure, String unit, @Nullable Double value) {
        if (value == null) {
            return Cells.MISSING;
        }
        Ways ways = SIDED.get(measure);
        int decimals = decimals(unit) + 1;
        String size = ways == null ? Figures.fixed(value, decimals) : Figures.size(value, decimals);
        String text = WORDS.say("unit." + unit, size);
        boolean zero = Figures.size(value, decimals).equals(Figures.size(0.0, decimals));
        return ways == null || zero ? text : text + " " + WORDS.say("trend." + ways.of(value));
    }

    /** A verdict on a trend; rising and falling say which way where the measure has a side. */
    static String verdict(String measure, @Nullable String verdict) {
        if (verdict == null) {
            return WORDS.say("trend.notJudged");
        }
        Ways ways = SIDED.get(measure);
        if (ways != null && ("rising".equals(verdict) || "falling".equals(verdict))) {
            return WORDS.say("trend." + ways.of("rising".equals(verdict) ? 1 : -1));
        }
        return verdict;
    }

    /** Why trends are not judged, as a line of its own. */
    static String notJudged(String why) {
        return WORDS.say("trend.notJudged.why", why);
    }

    private static int decimals(String unit) {
        return switch (unit) {
            case "ms", "g/s", "deg/s" -> 0;
            case "g", "deg", "" -> 1;
            default -> 2;
        };
    }
}

package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.report.form.Judged;
import evenfall.report.glossary.Term;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a landing: which measure it shows and how it is written.
 *
 * @param term what pages call it
 * @param measure name of the measure
 * @param unit key of its unit
 * @param decimals of values below ten; larger ones have one less
 * @param plus key of the words for values above zero, or null for a measure without a side
 * @param minus key of the words for values below zero, or null
 */
record Figure(
        Term term,
        String measure,
        String unit,
        int decimals,
        @Nullable String plus,
        @Nullable String minus) {

    /** A figure without a side. */
    static Figure plain(Term term, String measure, String unit, int decimals) {
        return new Figure(term, measure, unit, decimals, null, null);
    }

    /** A change of an angle, deg. */
    static Figure angle(Term term, String group, String plus, String minus) {
        return new Figure(term, group + ".change", "unit.degrees", 1, plus, minus);
    }

    /** The value, or null where it was not measured. */
    @Nullable Double value(Measures measures) {
        return found().of(measures);
    }

    /** One standard deviation of its error, or null where it is not known. */
    @Nullable Double sigma(Measures measures) {
        return MeasureList.sigmaOf(found()).map(sigma -> sigma.of(measures)).orElse(null);
    }

    /** How form is judged by it, or null where it is not. */
    @Nullable Judged judged() {
        return Arrays.stream(Judged.values())
                .filter(each -> each.measure().name().equals(measure))
                .findFirst()
                .orElse(null);
    }

    boolean sided() {
        return plus != null;
    }

    private Measure found() {
        return MeasureList.named(measure)
                .orElseThrow(() -> new IllegalStateException("there is no measure " + measure));
    }
}

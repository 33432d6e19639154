package evenfall.report.form;

import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import org.jspecify.annotations.Nullable;

/**
 * What was so when a landing was made, as far as it matters for what is usual.
 *
 * @param side the foot or feet landed on, or null if not known
 * @param heightM drop height, m, or null if not known
 * @param surface what was landed on, or null if not noted
 * @param shoes what was worn, or null if not noted
 */
public record Circumstance(
        @Nullable Side side,
        @Nullable Double heightM,
        @Nullable String surface,
        @Nullable String shoes) {

    /** What the sensors alone say. */
    public static Circumstance measured(Measures measures) {
        return new Circumstance(
                measures.balance().footSuggested(), measures.fall().dropHeightM(), null, null);
    }

    /** This with what was noted before what was measured. */
    public Circumstance noted(
            @Nullable Side noted, @Nullable Double height, @Nullable String ground, @Nullable String worn) {
        return new Circumstance(noted == null ? side : noted, height == null ? heightM : height, ground, worn);
    }
}

package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The whole analysis on motions of the synthesiser, recorded by perfect sensors and by sensors with one fault each. The truth is
 * the closed form, which shares no line of code with the program. The bounds hold what was reached.
 */
class LadderTest {

    static final String BOUNDS = "ladder-bounds.csv";

    private static final int LANDINGS = 4;

    private static final Map<String, LandingErrors> ERRORS = run();

    /** The rungs that stand in the table of bounds. */
    static Map<String, LandingErrors> run() {
        Set<String> held = bounds().stream().map(BoundTable.Bound::scenario).collect(Collectors.toSet());
        LadderRun ladder = new LadderRun(1, LANDINGS);
        List<Rung> rungs = Ladder.rungs().stream()
                .filter(rung -> held.contains(rung.name()))
                .toList();
        Map<String, LandingErrors> all = new LinkedHashMap<>();
        ladder.errors(rungs).forEach((rung, errors) -> all.put(rung.name(), errors));
        return all;
    }

    static List<BoundTable.Bound> bounds() {
        return BoundTable.read(BOUNDS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void error_staysWithinItsBound(BoundTable.Bound bound) {
        ErrorSummary summary =
                Objects.requireNonNull(ERRORS.get(bound.scenario())).summary(bound.figure());
        assertThat(summary.count() - summary.missing()).as("measured").isPositive();
        assertThat(summary.rms()).as("%s", bound).isLessThanOrEqualTo(bound.bound());
    }

    @Test
    void everyLandingIsFound_andNothingElse() {
        ERRORS.forEach((name, errors) ->
                assertThat(errors.of(Figure.LANDINGS)).as(name).allMatch(one -> one.error() == 0));
    }
}

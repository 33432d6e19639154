package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Root mean square errors on the open simulated sessions, found by the finder itself. These sessions were looked at while
 * the analysis was written, so the bounds hold what was reached; they prove nothing about other data.
 */
class SimulatedSessionsTest {

    static final String BOUNDS = "simulated-bounds.csv";
    private static final String COVERAGE = "coverage-bounds.csv";

    private static final Map<String, LandingErrors> GROUPS = new LinkedHashMap<>();
    private static final Map<String, LandingErrors> SESSIONS = new LinkedHashMap<>();

    @BeforeAll
    static void analyse() {
        Optional<Path> folder = OpenData.folder("landings");
        assumeTrue(folder.isPresent(), OpenData.missing("landings"));
        SimulatedRun run = SimulatedRun.of(folder.orElseThrow());
        CopiesRun copies = CopiesRun.once(run);
        GROUPS.putAll(copies.bounded(run));
        GROUPS.putAll(copies.covered(run));
        SESSIONS.putAll(run.bySession());
    }

    static List<BoundTable.Bound> bounds() {
        return BoundTable.read(BOUNDS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bounds")
    void error_staysWithinItsBound(BoundTable.Bound bound) {
        ErrorSummary summary = Objects.requireNonNull(GROUPS.get(bound.scenario()), bound.scenario())
                .summary(bound.figure());
        assertThat(summary.count() - summary.missing()).as("measured").isPositive();
        assertThat(summary.rms()).as("%s", bound).isLessThanOrEqualTo(bound.bound());
    }

    static List<CoverageTable.Row> coverage() {
        return CoverageTable.read(COVERAGE);
    }

    /** One sigma holds about 68 errors in 100 and two 95; more says less than is known, fewer says too much. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("coverage")
    void sigma_holdsAsManyErrorsAsItShould(CoverageTable.Row row) {
        ErrorSummary summary = Objects.requireNonNull(GROUPS.get(row.scenario()), row.scenario())
                .summary(row.figure());
        assertThat(summary.withinOne()).as("%s", row).isBetween(row.leastOne(), row.mostOne());
        assertThat(summary.withinTwo()).as("%s", row).isGreaterThanOrEqualTo(row.leastTwo());
    }

    @Test
    void everyLandingIsFound_andNothingElse() {
        SESSIONS.forEach((name, errors) ->
                assertThat(errors.of(Figure.LANDINGS)).as(name).allMatch(one -> one.error() == 0));
    }
}

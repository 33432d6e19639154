package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Root mean square errors on the open simulated sessions, found by the finder itself. These sessions were looked at while
 * the analysis was written, so the bounds hold what was reached; they prove nothing about other data.
 */
class SimulatedSessionsTest {

    private static final Map<String, LandingErrors> BY_SESSION = new LinkedHashMap<>();

    @BeforeAll
    static void analyse() {
        Optional<Path> folder = OpenData.folder("landings");
        assumeTrue(folder.isPresent(), OpenData.missing("landings"));
        for (String name : SimulatedSession.NAMES) {
            SimulatedSession session = SimulatedSession.read(folder.orElseThrow(), name);
            BY_SESSION.put(name, session.errors(session.analyse()));
        }
    }

    @ParameterizedTest(name = "{0} over {1} within {2}")
    @CsvFileSource(resources = "simulated-bounds.csv", numLinesToSkip = 1)
    void error_staysWithinItsBound(String figure, String sessions, double bound) {
        List<LandingErrors> parts = new ArrayList<>();
        for (String session : sessions.split(" ", -1)) {
            parts.add(Objects.requireNonNull(BY_SESSION.get(session), session));
        }
        ErrorSummary summary = LandingErrors.together(parts).summary(Figure.ofCode(figure));
        assertThat(summary.count()).isPositive();
        assertThat(summary.rms()).isLessThanOrEqualTo(bound);
    }

    @Test
    void everyLandingIsFound_andNothingElse() {
        BY_SESSION.forEach((name, errors) ->
                assertThat(errors.of(Figure.LANDINGS)).as(name).allMatch(one -> one.error() == 0));
    }
}

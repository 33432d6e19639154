package evenfall.fusion.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        assumeTrue(
                Files.isDirectory(SimulatedSession.folder().resolve("s1")),
                "the folder of simulated sessions is not there: " + SimulatedSession.folder());
        for (int k = 1; k <= 9; k++) {
            BY_SESSION.put("s" + k, SimulatedAccuracy.run("s" + k, true, false));
        }
    }

    @ParameterizedTest(name = "{0} over {1} within {2}")
    @CsvFileSource(resources = "simulated-bounds.csv", numLinesToSkip = 1)
    void error_staysWithinItsBound(String measure, String sessions, double bound) {
        List<LandingErrors.One> errors = new ArrayList<>();
        for (String session : sessions.split(" ", -1)) {
            LandingErrors of = Objects.requireNonNull(BY_SESSION.get(session), session);
            errors.addAll(of.all().getOrDefault(measure, List.of()));
        }
        assertThat(errors).isNotEmpty();
        assertThat(SimulatedAccuracy.rms(errors)).isLessThanOrEqualTo(bound);
    }

    @Test
    void everyLandingIsFound_andNothingElse() {
        BY_SESSION.forEach((name, errors) ->
                assertThat(errors.all().get("landings")).as(name).allMatch(one -> one.error() == 0));
    }
}

package evenfall.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.report.live.ToldComparison;
import evenfall.report.live.ToldDifference;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.SessionLanding;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ToldTextTest {

    /** Sigma of an invented depth is 1 cm, so of two together 1.41 cm. */
    private static final double MORE_THAN_BOTH_SIGMAS = 0.016;

    private static final double LESS_THAN_BOTH_SIGMAS = 0.013;

    private final List<Landing> whole = InventedSessions.of(4, 7).landings().stream()
            .map(SessionLanding::landing)
            .toList();

    @Test
    void whatDiffersByMoreThanBothSigmasIsNamedAndTheRestIsNot() {
        Landing told = deeper(whole.get(3), MORE_THAN_BOTH_SIGMAS, 2);
        Landing near = deeper(whole.get(1), LESS_THAN_BOTH_SIGMAS, 1);

        ToldComparison comparison = ToldComparison.of(List.of(whole.get(0), near, whole.get(2), told), whole);

        assertThat(comparison.differences()).hasSize(1);
        ToldDifference difference = comparison.differences().get(0);
        assertThat(difference.landing()).isEqualTo(4);
        assertThat(difference.measure().name()).isEqualTo("depthM");
        assertThat(difference.sigmas()).isBetween(1.13, 1.14);
        assertThat(comparison.gone()).isEmpty();
        assertThat(comparison.untold()).isEmpty();
        assertThat(ToldText.sentences(comparison))
                .singleElement()
                .asString()
                .matches("Landing 4: pelvis sank was told as 0\\.\\d\\d m, is 0\\.\\d\\d m\\.");
    }

    @Test
    void landingsOnlyOneOfThemKnowsAreSaid() {
        ToldComparison comparison =
                ToldComparison.of(List.of(whole.get(0), moved(whole.get(1), 5)), whole.subList(0, 2));

        assertThat(comparison.gone()).hasSize(1);
        assertThat(comparison.untold()).containsExactly(whole.get(1));
        assertThat(ToldText.sentences(comparison))
                .containsExactly(
                        "The landing told at 1:55.0 is none, by all that was recorded.",
                        "Landing 2 at 1:50.0 was not told while it was recorded.");
    }

    private static Landing deeper(Landing landing, double metres, int index) {
        Measures m = Objects.requireNonNull(landing.measures());
        Braking b = m.braking();
        Double depth = Objects.requireNonNull(b.depthM());
        return new Landing(
                index,
                landing.kind(),
                landing.moments(),
                null,
                new Measures(
                        m.fall(),
                        m.impact(),
                        new Braking(depth + metres, b.brakingS(), b.meanBrakingG(), b.collapseDegPerS()),
                        m.posture(),
                        m.balance(),
                        m.sigma()),
                landing.flags());
    }

    private static Landing moved(Landing landing, double seconds) {
        Moments m = landing.moments();
        return new Landing(
                landing.index(),
                landing.kind(),
                new Moments(null, m.contactS() + seconds, m.peakS() + seconds, null, null),
                null,
                landing.measures(),
                landing.flags());
    }
}

package evenfall.report.coaching;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.form.Form;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.FormStandard;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TalkTest {

    private static final String LEANED = "Leaned right, over the limit.";

    private final List<String> said = new ArrayList<>();
    private Talk talk = talk(TalkChoice.EVERY);

    @Test
    void everyLanding() {
        land(60);
        land(80);

        assertThat(said).containsExactly(LEANED, LEANED);
    }

    @Test
    void everyThirdLanding() {
        talk = talk(TalkChoice.THIRD);
        for (int i = 1; i <= 7; i++) {
            land(60 + 20 * i);
        }

        assertThat(said).hasSize(2);
    }

    @Test
    void atTheEndOrNeverMeansNotNow() {
        talk = talk(TalkChoice.END);
        land(60);
        talk.choose(TalkChoice.NONE);
        land(80);
        assertThat(said).isEmpty();

        talk.choose(TalkChoice.EVERY);
        land(100);
        assertThat(said).hasSize(1);
    }

    /** Settled at 61: until 65. */
    @Test
    void neverLate() {
        hear(List.of(leaning(60)), List.of(), 64.9, false);
        assertThat(said).hasSize(1);
        hear(List.of(leaning(60)), List.of(), 65.1, false);
        assertThat(said).hasSize(1);
    }

    @Test
    void neverOnceTheNextHasBegun() {
        hear(List.of(leaning(60)), List.of(), 62, true);

        assertThat(said).isEmpty();
    }

    @Test
    void onlyTheNewestOfSeveral() {
        hear(List.of(leaning(60), leaning(63)), List.of(), 65, false);

        assertThat(said).hasSize(1);
    }

    @Test
    void standingAnewEndsIt() {
        hear(List.of(leaning(60)), List.of(), 62, false);

        assertThat(talk.mustBeSilent(62.1, 1.1)).isFalse();
        assertThat(talk.mustBeSilent(62.5, 0)).isFalse();
        assertThat(talk.mustBeSilent(63.5, 0.5)).isTrue();
        assertThat(talk.mustBeSilent(63.6, 0)).isTrue();
    }

    @Test
    void aFallIsToldAtOnceAndSilencesUntilTheNextLanding() {
        hear(List.of(leaning(60)), List.of(61.5), 62, false);
        assertThat(said).containsExactly("Check the athlete.");
        assertThat(talk.paused()).isTrue();

        land(90);
        assertThat(said).hasSize(2);
        assertThat(talk.paused()).isFalse();
    }

    @Test
    void orUntilTheCoachSaysGoOn() {
        hear(List.of(), List.of(61.5), 62, false);
        talk.goOn();

        assertThat(talk.paused()).isFalse();
    }

    @Test
    void aFallIsToldWhateverTheChoice() {
        talk = talk(TalkChoice.NONE);
        hear(List.of(), List.of(61.5), 62, true);

        assertThat(said).containsExactly("Check the athlete.");
    }

    /** The cautions say: two landings in a row with form lost, go lower. */
    @Test
    void formLostTwiceInARow() {
        talk = talk(TalkChoice.THIRD);
        hear(List.of(lost(60, false)), List.of(), 62, false);
        hear(List.of(lost(80, false)), List.of(), 82, false);
        assertThat(said).containsExactly("Form lost twice in a row: go lower.");

        hear(List.of(lost(100, false)), List.of(), 102, false);
        assertThat(said).containsExactly("Form lost twice in a row: go lower.", LEANED);
    }

    @Test
    void formLostOnTheEdgeIsNotSure() {
        hear(List.of(lost(60, true)), List.of(), 62, false);
        hear(List.of(lost(80, true)), List.of(), 82, false);

        assertThat(said).containsExactly(LEANED, LEANED);
    }

    private static Talk talk(TalkChoice choice) {
        return new Talk(choice, () -> FormStandard.STARTING, List::of);
    }

    private void land(double contactS) {
        hear(List.of(leaning(contactS)), List.of(), contactS + 2, false);
    }

    private void hear(List<SessionLanding> landings, List<Double> falls, double nowS, boolean goesOn) {
        talk.hear(new News(landings, falls), nowS, goesOn).forEach(utterance -> said.add(utterance.text()));
    }

    private static SessionLanding leaning(double contactS) {
        return landing(contactS).make();
    }

    private static SessionLanding lost(double contactS, boolean onEdge) {
        Landings landing = landing(contactS);
        landing.verdict = new FormVerdict(
                Form.LOST,
                List.of(
                        new Reason(FormQuestion.STAYS_EVEN, "trunkLeanDeg.change", "leaned", true, false),
                        new Reason(FormQuestion.SPINE_STAYS_LONG, "spineFlexionDeg.change", "folded", true, onEdge)),
                false);
        return landing.make();
    }

    private static Landings landing(double contactS) {
        Landings landing = new Landings();
        landing.contactS = contactS;
        landing.settledS = contactS + 1;
        landing.lean = 12.0;
        return landing;
    }
}

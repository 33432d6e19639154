package evenfall.report.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import evenfall.report.form.FormQuestion;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.log.LandingNote;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SessionSentenceTest {

    private static final double LITTLE = 2;
    private static final double STRAINED = 7;

    @Test
    void nothing_isSaidAsNothing() {
        assertThat(say()).isEqualTo("No landing was found.");
    }

    @Test
    void one_isOne() {
        assertThat(say(landing(1, 0.4, LITTLE))).isEqualTo("1 landing from 0.4 m. Form held.");
        assertThat(say(landing(1, 0.4, STRAINED))).isEqualTo("1 landing from 0.4 m. Form did not hold.");
    }

    @Test
    void two_areBothOrNeither() {
        assertThat(say(landing(1, 0.4, LITTLE), landing(2, 0.4, LITTLE)))
                .isEqualTo("2 landings from 0.4 m. Form held in both.");
        assertThat(say(landing(1, 0.4, STRAINED), landing(2, 0.4, STRAINED)))
                .isEqualTo("2 landings from 0.4 m. Form held in neither. The trunk leaned right in both.");
    }

    @Test
    void oneHeight_hasNoAbove() {
        assertThat(say(landing(1, 0.6, LITTLE), landing(2, 0.6, STRAINED), landing(3, 0.6, STRAINED)))
                .isEqualTo("3 landings from 0.6 m. Form held in 1. The trunk leaned right in 2 of 3.");
    }

    @Test
    void whatGivesWayHigherUp_isSaidWithItsHeight() {
        assertThat(say(
                        landing(1, 0.4, LITTLE),
                        landing(2, 0.6, LITTLE),
                        landing(3, 0.9, LITTLE),
                        landing(4, 1.0, STRAINED),
                        landing(5, 1.1, LITTLE),
                        landing(6, 1.2, STRAINED),
                        landing(7, 1.2, STRAINED)))
                .isEqualTo(
                        "7 landings from 0.4 to 1.2 m. Form held in 4. Above 0.9 m the trunk leaned right in 3 of 4.");
    }

    @Test
    void whatGaveWayLowerDownToo_isNotHidden() {
        assertThat(say(
                        landing(1, 0.4, LITTLE),
                        landing(2, 0.6, LITTLE),
                        landing(3, 0.6, LITTLE),
                        landing(4, 0.9, LITTLE),
                        landing(5, 0.9, LITTLE),
                        landing(6, 0.9, STRAINED),
                        landing(7, 1.2, STRAINED),
                        landing(8, 1.2, STRAINED),
                        landing(9, 1.2, STRAINED)))
                .endsWith("Above 0.9 m the trunk leaned right in all 3, and once from 0.9 m.");
    }

    @Test
    void whatElseMadeLandingsLost_isSaid() {
        List<SessionLanding> landings = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            SessionLanding made = landing(i, i < 4 ? 0.6 : 1.2, i < 4 ? LITTLE : STRAINED);
            landings.add(i < 5 ? made : lostByStep(made));
        }
        assertThat(say(landings.toArray(SessionLanding[]::new)))
                .endsWith("Above 0.6 m the trunk leaned right in all 3. A step back followed in 2 of 6.");
    }

    private static SessionLanding lostByStep(SessionLanding made) {
        List<Reason> reasons =
                new ArrayList<>(Objects.requireNonNull(made.verdict()).reasons());
        reasons.add(new Reason(FormQuestion.STAYS_OVER_THE_FEET, "stepsAfter", "one step back", true, false));
        return new SessionLanding(
                made.landing(), new FormVerdict(Form.LOST, reasons, false), made.trace(), made.note());
    }

    @Test
    void whatGaveWayOnce_isNotMadeAPattern() {
        assertThat(say(landing(1, 0.4, LITTLE), landing(2, 0.8, STRAINED)))
                .isEqualTo("2 landings from 0.4 to 0.8 m. Form held in 1.");
    }

    @Test
    void leftSide_isSaidAsLeft() {
        assertThat(say(landing(1, 0.4, -STRAINED), landing(2, 0.4, -STRAINED), landing(3, 0.4, LITTLE)))
                .endsWith("The trunk leaned left in 2 of 3.");
    }

    @Test
    void leftOut_countsOnlyAsLeftOut() {
        SessionLanding one = landing(1, 0.4, LITTLE);
        SessionLanding out = noted(landing(2, 1.4, STRAINED), new LandingNote(null, 1.4, null, null, "slipped", null));

        assertThat(say(one, out)).isEqualTo("1 landing from 0.4 m. Form held. 1 landing is left out.");
        assertThat(say(out)).isEqualTo("No landing was found. 1 landing is left out.");
    }

    @Test
    void unjudged_isSaid() {
        SessionLanding judged = landing(1, 0.4, LITTLE);
        SessionLanding unjudged = new SessionLanding(
                landing(2, 0.4, LITTLE).landing(), new FormVerdict(null, List.of(), true), null, judged.note());

        assertThat(say(judged, unjudged))
                .isEqualTo("2 landings from 0.4 m. Form held in 1 of the 1 that could be judged.");
        assertThat(say(unjudged)).isEqualTo("1 landing from 0.4 m. Form could not be judged.");
    }

    @Test
    void measuredHeight_standsInForAMissingNote() {
        assertThat(say(noted(landing(1, 0.52, LITTLE), LandingNote.NONE))).startsWith("1 landing from 0.5 m.");
    }

    @Test
    void fall_callsTheCoach() {
        SessionLanding fall = new SessionLanding(
                new Landing(2, EventKind.FALL, new Moments(null, 80, 80.1, null, null), null, null, Set.of()),
                null,
                null,
                LandingNote.NONE);

        assertThat(say(landing(1, 0.4, LITTLE), fall)).endsWith("One fall: check the athlete.");
        assertThat(say(fall)).isEqualTo("No landing was found. One fall: check the athlete.");
    }

    private static String say(SessionLanding... landings) {
        Session session = InventedSessions.session(new ArrayList<>(List.of(landings)), List.of(), List.of());
        return SessionSentence.of(session);
    }

    private static SessionLanding landing(int index, double height, double lean) {
        SessionLanding made =
                InventedSessions.landing(index, 60.0 * index, height, Side.BOTH, lean, new SplittableRandom(index));
        return noted(made, new LandingNote(Side.BOTH, height, null, null, null, null));
    }

    private static SessionLanding noted(SessionLanding landing, LandingNote note) {
        return new SessionLanding(landing.landing(), landing.verdict(), landing.trace(), note);
    }
}

package evenfall.report.round;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.analysis.OpeningState;
import evenfall.fusion.landing.Side;
import evenfall.ingest.place.Place;
import evenfall.report.form.Form;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.round.RoutineStep.State;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.SessionLanding;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a coach sees of landings and of the opening routine. */
final class DropsTest {

    private final Drops drops = new Drops();

    @Test
    void planHoldsForLandingsAfterIt_andNothingIsMadeUp() {
        SessionLanding first = landing();
        double contactS = first.landing().moments().contactS();
        drops.came(new News(List.of(first), List.of()));
        assertThat(drops.plan()).isEqualTo(Plan.NONE);
        drops.plan(Plan.NONE.press(Side.LEFT).press(0.4), contactS - 1);
        drops.came(new News(List.of(first), List.of()));
        drops.plan(Plan.NONE.press(Side.RIGHT), contactS + 1);
        drops.came(new News(List.of(first), List.of()));
        assertThat(drops.strip()).extracting(LandingMark::side).last().isEqualTo(Side.LEFT);
        assertThat(drops.strip().get(1).heightM()).isEqualTo(0.4);
        assertThat(drops.second()).startsWith("Landing 3, left foot, 0.4 m");
    }

    @Test
    void pressedAgain_isTakenBack() {
        Plan plan = Plan.NONE.press(Side.BOTH).press(0.3).press("mat");
        assertThat(plan).isEqualTo(new Plan(Side.BOTH, 0.3, "mat"));
        assertThat(plan.press(Side.BOTH).press(0.3).press("mat")).isEqualTo(Plan.NONE);
    }

    @Test
    void fall_standsUntilTheCoachSaysThatAllIsWell() {
        drops.came(new News(List.of(), List.of(12.0)));
        assertThat(drops.fallen()).isTrue();
        drops.heard("Check the athlete.");
        assertThat(drops.fallen()).isTrue();
        drops.goOn();
        assertThat(drops.fallen()).isFalse();
    }

    /** Above 0.8 m the invented person's trunk leans right by more than 6°. */
    @Test
    void headline_saysWhatWasWorst() {
        List<SessionLanding> landings = InventedSessions.of(9, 1).landings();
        drops.came(new News(landings.subList(0, 1), List.of()));
        assertThat(drops.headline()).isEqualTo("Held.");
        drops.came(new News(landings.subList(8, 9), List.of()));
        assertThat(drops.headline()).isEqualTo("Leaned right.");
        assertThat(drops.reasons()).anyMatch(reason -> reason.contains("trunk leaned right"));
        assertThat(drops.strip().get(1).form()).isNotEqualTo(Form.HELD);
    }

    @Test
    void routine_eachStepFollowsTheOneBefore() {
        assertThat(states(0, 0, 0, null)).containsExactly(State.NOW, State.TO_DO, State.TO_DO, State.TO_DO);
        assertThat(states(5, 1, 0, null)).containsExactly(State.DONE, State.NOW, State.TO_DO, State.TO_DO);
        assertThat(states(0, 2, 1, null)).containsExactly(State.DONE, State.DONE, State.NOW, State.TO_DO);
        assertThat(states(0, 2, 2, 9.0)).containsExactly(State.DONE, State.DONE, State.DONE, State.NOW);
        assertThat(states(0, 2, 2, 1.5)).containsOnly(State.DONE);
    }

    private static List<State> states(double standingS, int bends, int drops, @Nullable Double clockMs) {
        OpeningState opening = new OpeningState(
                standingS, 0, Map.of(Place.PELVIS, bends, Place.UPPER_BACK, bends), drops, clockMs, false);
        return RoutineStep.of(opening, false).stream().map(RoutineStep::state).toList();
    }

    private static SessionLanding landing() {
        return InventedSessions.of(3, 1).landings().get(0);
    }
}

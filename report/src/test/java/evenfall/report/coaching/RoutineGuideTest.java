package evenfall.report.coaching;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.analysis.OpeningState;
import evenfall.ingest.place.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The steps are those of docs/strapping.md. */
class RoutineGuideTest {

    private final RoutineGuide guide = new RoutineGuide();
    private final List<String> said = new ArrayList<>();
    private final Map<Place, Integer> bends = new HashMap<>(Map.of(Place.PELVIS, 0, Place.UPPER_BACK, 0));
    private double nowS;
    private double standing;
    private int drops;
    private @Nullable Double sigmaMs;
    private boolean over;

    @Test
    void allWentWell() {
        stand(5.5);
        bend(Place.PELVIS, Place.UPPER_BACK);
        bend(Place.PELVIS, Place.UPPER_BACK);
        stand(2.5);
        drops = 2;
        sigmaMs = 1.3;
        go(1);

        assertThat(said)
                .containsExactly(
                        "Opening routine: stand quietly for five seconds.",
                        "Standing still; 3 more seconds.",
                        "Standing still; 2 more seconds.",
                        "Standing still; 1 more second.",
                        "Good. Now bend forward slowly and come back up, twice, about three seconds each way.",
                        "One bend seen; bend once more, then stand still.",
                        "Two bends seen. Stand still for two seconds.",
                        "Now two heel drops: up on the toes, let the heels fall, knees soft.",
                        "Ready: two bends seen, two heel drops seen, clocks agree within 2 ms. Stand still for two seconds,"
                                + " then begin.");
        assertThat(guide.isOver()).isTrue();
        over = true;
        go(5);
        assertThat(said).hasSize(9);
    }

    @Test
    void whoMovesStandsAnew() {
        stand(2.5);
        go(1);
        stand(1.5);

        assertThat(said)
                .containsExactly(
                        "Opening routine: stand quietly for five seconds.",
                        "Standing still; 3 more seconds.",
                        "That was too short: stand quietly until the five seconds are over.");
    }

    @Test
    void whoStopsForAMomentOnTheWayIsNotCounted() {
        for (int i = 0; i < 4; i++) {
            go(3);
            stand(1.5);
        }

        assertThat(said).containsExactly("Opening routine: stand quietly for five seconds.");
    }

    @Test
    void aSecondHeelDropIsNotAskedForWhileItMayStillBeSeen() {
        stand(5.5);
        bend(Place.PELVIS, Place.UPPER_BACK);
        bend(Place.PELVIS, Place.UPPER_BACK);
        stand(2.5);
        drops = 1;
        go(3.8);
        assertThat(said.get(said.size() - 1)).startsWith("Now two heel drops");
        go(0.5);
        assertThat(said.get(said.size() - 1)).isEqualTo("One heel drop seen; once more.");
    }

    @Test
    void aBendThatOneSensorDidNotSee() {
        stand(5.5);
        bend(Place.PELVIS);
        go(3.5);

        assertThat(said.get(said.size() - 1))
                .isEqualTo("One bend seen by the pelvis sensor, none by the upper-back sensor: bend again, deeper and"
                        + " straight ahead.");
    }

    @Test
    void noBendIsAskedForAgainOnce() {
        stand(5.5);
        go(60);

        assertThat(said.get(said.size() - 1)).startsWith("No bend seen yet");
        assertThat(said).hasSize(6);
    }

    @Test
    void oneBendIsEnoughAfterAWhile() {
        stand(5.5);
        bend(Place.PELVIS, Place.UPPER_BACK);
        go(16);
        stand(2.5);
        drops = 2;
        sigmaMs = 0.4;
        go(1);

        assertThat(said.get(said.size() - 1))
                .startsWith("Ready: one bend seen, two heel drops")
                .contains("within 1 ms");
    }

    @Test
    void clocksThatDoNotAgreeNeedMoreHeelDrops() {
        stand(5.5);
        bend(Place.PELVIS, Place.UPPER_BACK);
        bend(Place.PELVIS, Place.UPPER_BACK);
        stand(2.5);
        drops = 2;
        go(20);
        assertThat(said.get(said.size() - 1)).startsWith("Two heel drops seen, but the clocks are not tied together");
        drops = 4;
        sigmaMs = 12.0;
        go(1);
        assertThat(said.get(said.size() - 1)).contains("agree only within 12 ms");
        sigmaMs = 2.0;
        go(1);
        assertThat(said.get(said.size() - 1)).startsWith("Ready: two bends seen, 4 heel drops seen");
    }

    @Test
    void oneSensorNeedsNoHeelDrops() {
        bends.remove(Place.UPPER_BACK);
        stand(5.5);
        bend(Place.PELVIS);
        bend(Place.PELVIS);
        go(1);

        assertThat(said.get(said.size() - 1)).startsWith("Ready: two bends seen; one sensor needs no heel drops");
    }

    @Test
    void aFirstLandingBeforeTheBends() {
        go(1);
        over = true;
        go(1);

        assertThat(said).hasSize(2);
        assertThat(said.get(1)).contains("before a bend was seen");
        assertThat(guide.isOver()).isTrue();
    }

    private void bend(Place... places) {
        go(6);
        for (Place place : places) {
            bends.merge(place, 1, Integer::sum);
        }
        go(0.2);
    }

    private void stand(double seconds) {
        for (double end = nowS + seconds; nowS < end; ) {
            standing += 0.1;
            look();
        }
        standing = 0;
    }

    private void go(double seconds) {
        standing = 0;
        for (double end = nowS + seconds; nowS < end; ) {
            look();
        }
    }

    private void look() {
        nowS += 0.1;
        guide.look(new OpeningState(standing, 0, bends, drops, sigmaMs, over), nowS)
                .ifPresent(utterance -> said.add(utterance.text()));
    }
}

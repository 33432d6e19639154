package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.sensor.Mount;
import evenfall.fixtures.sensor.Slip;
import evenfall.fixtures.sensor.Triple;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.fusion.analysis.LiveAnalyser;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import org.junit.jupiter.api.Test;

/** A strap that moves while somebody trains must be known while they do, and one that sits must not be said to have moved. */
final class LiveStrapTest {

    private static final double BLOCK_S = 1;
    /** The slip lies between two stances, which are some seconds apart. */
    private static final double NEAR_S = 12;

    private static final int DROPS = 8;

    @Test
    void strapThatTips_isKnownBeforeTheEnd() {
        Mount tipped = Mount.aligned().withSlip(new Slip(75, new Triple(0, 1, 0), 15));
        SyntheticSession session = session(tipped);

        LiveAnalyser live = play(session);

        assertThat(live.strapMoves(Place.PELVIS)).hasSize(1);
        assertThat(live.strapMoves(Place.PELVIS).get(0)).isCloseTo(75, within(NEAR_S));
        assertThat(live.strapMoves(Place.UPPER_BACK)).isEmpty();
    }

    @Test
    void strapsThatSit_areNotSaidToHaveMoved() {
        LiveAnalyser live = play(session(Mount.aligned()));

        assertThat(live.strapMoves(Place.PELVIS)).isEmpty();
        assertThat(live.strapMoves(Place.UPPER_BACK)).isEmpty();
    }

    private static SyntheticSession session(Mount pelvis) {
        SessionScript script = SessionScript.idealSensors(31);
        script.pelvisSensor(script.pelvisSensor().withMount(pelvis));
        script.openingRoutine();
        for (int i = 0; i < DROPS; i++) {
            script.drop(LandingPlan.fromHeight(0.4));
        }
        return script.stand(3).record();
    }

    private static LiveAnalyser play(SyntheticSession session) {
        Recording whole = SyntheticStreams.recording(session);
        LiveAnalyser live = new LiveAnalyser();
        double endS = whole.pelvis().stream().durationS();
        for (double now = BLOCK_S; now < endS; now += BLOCK_S) {
            live.advance(LivePlay.until(whole, now));
        }
        return live;
    }
}

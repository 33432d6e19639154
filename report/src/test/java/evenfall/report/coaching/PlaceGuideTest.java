package evenfall.report.coaching;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.place.Place;
import evenfall.ingest.wire.TapWatch.Answer;
import evenfall.ingest.wire.TapWatch.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlaceGuideTest {

    private static final Answer NONE = new Answer(Verdict.NONE, -1);

    private final PlaceGuide guide = new PlaceGuide();
    private final List<String> said = new ArrayList<>();
    private final Map<Integer, Place> places = new HashMap<>();
    private double nowS;

    @Test
    void twoSensorsAreAskedForOnceAndPlacedByTaps() {
        go(10, List.of(0x1A2B, 0x3C4D), Set.of(), NONE);
        assertThat(said)
                .containsExactly(
                        "The sensors do not say where they are worn: stand still and tap the pelvis sensor three times.",
                        "Their numbers are 1A2B, 3C4D; 'pelvis 1A2B', typed, says it too.");
        assertThat(places).isEmpty();

        go(0.1, List.of(0x1A2B, 0x3C4D), Set.of(), new Answer(Verdict.TAPPED, 0x3C4D));
        assertThat(places).isEqualTo(Map.of(0x3C4D, Place.PELVIS, 0x1A2B, Place.UPPER_BACK));
        assertThat(said.get(2)).isEqualTo("Sensor 3C4D is worn at the pelvis, sensor 1A2B at the upper back.");
    }

    @Test
    void doubtsAreToldOncePerTapping() {
        List<Integer> two = List.of(1, 2);
        go(3, two, Set.of(), NONE);
        go(1, two, Set.of(), new Answer(Verdict.OTHERS_MOVED, 1));
        go(3, two, Set.of(), NONE);
        go(1, two, Set.of(), new Answer(Verdict.OTHERS_SILENT, 1));

        assertThat(said).hasSize(4);
        assertThat(said.get(2)).contains("moved too");
        assertThat(said.get(3)).contains("switched on");
        assertThat(places).isEmpty();
    }

    @Test
    void sensorsThatSaySoAreNotAskedFor() {
        go(30, List.of(), Set.of(Place.PELVIS, Place.UPPER_BACK), NONE);
        go(1, List.of(7, 8), Set.of(), NONE);

        assertThat(said).isEmpty();
    }

    @Test
    void oneBesideAPlacedOneIsAtTheOtherPlace() {
        go(2, List.of(7), Set.of(Place.UPPER_BACK), NONE);

        assertThat(places).isEqualTo(Map.of(7, Place.PELVIS));
    }

    @Test
    void oneAloneIsThePelvisAfterAWhile() {
        go(14, List.of(7), Set.of(), NONE);
        assertThat(places).isEmpty();
        go(2, List.of(7), Set.of(), NONE);

        assertThat(places).isEqualTo(Map.of(7, Place.PELVIS));
        assertThat(said.get(0)).contains("type 'upper-back 0007'");
    }

    private void go(double seconds, List<Integer> unplaced, Set<Place> taken, Answer answer) {
        for (double end = nowS + seconds - 0.01; nowS < end && places.isEmpty(); nowS += 0.1) {
            PlaceGuide.Step step = guide.look(nowS, unplaced, taken, answer);
            step.said().forEach(utterance -> said.add(utterance.text()));
            places.putAll(step.places());
        }
    }
}

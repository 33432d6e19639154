package evenfall.report.round;

import evenfall.fusion.analysis.OpeningState;
import java.util.List;
import java.util.Map;

/**
 * How a turn stands at a moment.
 *
 * @param newestS time of the newest pelvis sample, s
 * @param pelvis the pelvis sensor
 * @param upperBack the upper-back sensor
 * @param unplaced numbers of sensors that do not say where they are worn
 * @param opening how far the opening routine has come
 * @param routineOver whether it is over, well done or not
 * @param paused whether the talk is silent since somebody fell
 */
public record Glance(
        double newestS,
        SensorGlance pelvis,
        SensorGlance upperBack,
        List<Integer> unplaced,
        OpeningState opening,
        boolean routineOver,
        boolean paused) {

    static final Glance NOTHING = new Glance(
            0,
            SensorGlance.NOTHING,
            SensorGlance.NOTHING,
            List.of(),
            new OpeningState(0, 0, Map.of(), 0, null, false),
            false,
            false);

    public Glance {
        unplaced = List.copyOf(unplaced);
    }
}

package evenfall.fusion.alignment;

import evenfall.ingest.recording.SensorStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the opening routine of a stream that may grow, asked again and again; looks at no pause between stances twice. */
public final class RoutineFinder {

    private record Pause(Stance before, Stance after) {}

    private Map<Pause, List<ForwardBend>> known = new HashMap<>();

    /**
     * The routine so far, as {@link OpeningRoutine#find} tells it.
     *
     * @param beforeS where to stop looking, s on the sensor's clock
     */
    public OpeningRoutine find(SensorStream stream, List<Stance> stances, double beforeS) {
        Map<Pause, List<ForwardBend>> asked = new HashMap<>();
        OpeningRoutine routine = OpeningRoutine.find(
                stances,
                beforeS,
                (before, after) -> asked.computeIfAbsent(new Pause(before, after), pause -> bends(stream, pause)));
        known = asked;
        return routine;
    }

    private List<ForwardBend> bends(SensorStream stream, Pause pause) {
        List<ForwardBend> bends = known.get(pause);
        return bends != null ? bends : BendFinder.find(stream, pause.before(), pause.after());
    }
}

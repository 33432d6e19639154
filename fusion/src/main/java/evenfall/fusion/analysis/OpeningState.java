package evenfall.fusion.analysis;

import evenfall.ingest.place.Place;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How far the opening routine has come.
 *
 * @param standingS how long the person has been standing still, s; 0 while moving
 * @param stanceS length of the longest quiet stance that the angles' zero may be taken from, s; 0 without one
 * @param bends forward bends seen by each worn sensor: those after a quiet stance as long as it is not over, since whoever warms
 *     up before it bends too; then all that sides are told by
 * @param heelDrops heel drops seen
 * @param clockSigmaMs how well the two clocks are tied together, ms; null while they are not, or with one sensor
 * @param over whether it is over: the first landing has come
 */
public record OpeningState(
        double standingS,
        double stanceS,
        Map<Place, Integer> bends,
        int heelDrops,
        @Nullable Double clockSigmaMs,
        boolean over) {

    public OpeningState {
        bends = Map.copyOf(bends);
    }
}

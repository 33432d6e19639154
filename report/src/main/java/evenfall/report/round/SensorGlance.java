package evenfall.report.round;

import evenfall.fusion.analysis.Level;
import org.jspecify.annotations.Nullable;

/**
 * How one sensor stands at a moment.
 *
 * @param heard whether anything ever came from it
 * @param speaks whether something came just now
 * @param rateHz samples a second; 0 while not known
 * @param atRest whether it lies or hangs still
 * @param level how its segment stands, or null while too little came
 */
public record SensorGlance(
        boolean heard,
        boolean speaks,
        double rateHz,
        boolean atRest,
        @Nullable Level level) {

    /** Fewer samples a second miss the peak of a landing: common practice, no source. */
    public static final double LEAST_HZ = 95;

    static final SensorGlance NOTHING = new SensorGlance(false, false, 0, false, null);

    /** Whether its rate is known and high enough. */
    public boolean rateIsRight() {
        return rateHz >= LEAST_HZ;
    }
}

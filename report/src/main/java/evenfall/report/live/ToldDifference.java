package evenfall.report.live;

import evenfall.report.measure.Measure;

/**
 * A measure of a landing that was told live and is another by the analysis of the whole.
 *
 * @param landing the landing's index in the results of the whole
 * @param measure which
 * @param told as it was told
 * @param is as it is by the whole
 * @param sigma one standard deviation of the two together, in the measure's unit
 */
public record ToldDifference(int landing, Measure measure, double told, double is, double sigma) {

    /** How many of its sigmas the difference is. */
    public double sigmas() {
        return Math.abs(told - is) / sigma;
    }
}

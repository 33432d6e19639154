package evenfall.report.coaching;

/**
 * One measure of one landing as a remark may use it.
 *
 * @param value in the measure's unit and sign
 * @param sigma one standard deviation of its error, 0 for a count
 * @param atLeast whether it was larger than the sensor could show
 */
record Reading(double value, double sigma, boolean atLeast) {}

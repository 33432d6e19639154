package evenfall.report.form;

/**
 * What is usual in one measure in an athlete's baseline.
 *
 * @param median their median; turned to the landing foot for landings on one foot
 * @param spread the largest of their robust spread, the measurement's own error and a stated least spread
 * @param landings how many
 * @param sessions of how many sessions
 */
public record OwnUsual(double median, double spread, int landings, int sessions) {}

package evenfall.report.form;

/**
 * How a landing's peak compares with what is usual for the athlete at its height.
 *
 * @param usualG the usual peak, g
 * @param limitG beyond which it is a fault, g
 * @param spreads so many robust spreads above usual; below 0 when softer; with {@code atLeast} at least so many
 * @param atLeast whether the peak was cut off at full scale
 * @param landings how many tell what is usual
 */
public record PeakForHeight(double usualG, double limitG, double spreads, boolean atLeast, int landings) {}

package evenfall.fusion.landing;

/**
 * A value with one standard deviation of its error, both in the same unit.
 *
 * @param value the value
 * @param sigma its standard deviation, never negative
 */
public record Estimate(double value, double sigma) {}

package evenfall.report.html.view;

/**
 * One measured figure in words.
 *
 * @param label what it is
 * @param value the value with its side and unit, or that it was not measured
 * @param error one standard deviation of its error with a sign before it, or empty
 */
public record FigureView(String label, String value, String error) {}

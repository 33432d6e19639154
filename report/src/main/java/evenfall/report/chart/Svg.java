package evenfall.report.chart;

/**
 * One drawing as SVG markup, ready to stand inside a page.
 *
 * @param markup a whole {@code svg} element; well-formed, safe to insert as it is
 */
public record Svg(String markup) {}

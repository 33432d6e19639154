package evenfall.report.html.view;

import evenfall.report.chart.Svg;

/** A mark and what it means. */
public record MarkView(Svg mark, String words) {}

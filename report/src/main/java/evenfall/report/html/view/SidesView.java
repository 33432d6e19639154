package evenfall.report.html.view;

import evenfall.report.chart.Picture;
import java.util.List;

/**
 * Left and right of one session.
 *
 * @param lines what can be said of it, a sentence each
 * @param wide the chart for a wide window, or empty markup where one side is missing
 * @param narrow the chart for a narrow one
 */
public record SidesView(List<String> lines, Picture wide, Picture narrow) {}

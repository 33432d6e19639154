package evenfall.report.html.view;

import evenfall.report.chart.Picture;
import java.util.List;

/**
 * Where form gives way.
 *
 * @param lines what can be said of it, a sentence each
 * @param caution what to heed where a height is decided on
 * @param wide the chart for a wide window
 * @param narrow the chart for a narrow one
 */
public record HeightView(List<String> lines, String caution, Picture wide, Picture narrow) {}

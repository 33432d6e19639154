package evenfall.report.html.view;

import evenfall.report.chart.Svg;
import java.util.List;

/**
 * The session page.
 *
 * @param title for the window's title and the head line
 * @param who when and what was worn, one line
 * @param health the recording's health in one line
 * @param sentence the session in one breath
 * @param cautions what to heed before deciding, the gravest first
 * @param urgent how many of {@code cautions} come from this session's own pain, signs or falls
 * @param diary what the athlete entered that day
 * @param stripWide the strip for a wide window
 * @param stripNarrow the strip for a narrow one
 * @param key what the marks mean
 * @param columns head of the table
 * @param landings each landing
 * @param others falls and runs of steps, a line each
 * @param method how it was measured
 */
public record SessionView(
        String title,
        String who,
        String health,
        String sentence,
        List<String> cautions,
        int urgent,
        List<String> diary,
        Svg stripWide,
        Svg stripNarrow,
        List<MarkView> key,
        List<ColumnGroup> columns,
        List<LandingView> landings,
        List<String> others,
        MethodView method) {}

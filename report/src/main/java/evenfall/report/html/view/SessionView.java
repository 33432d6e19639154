package evenfall.report.html.view;

import evenfall.report.chart.Picture;
import evenfall.report.chart.Svg;
import java.util.List;

/**
 * The session page.
 *
 * @param title for the window's title and the head line
 * @param who when and what was worn, one line
 * @param health the recording's health in one line
 * @param sentence the session in one breath
 * @param worst what was wrong with the landing that passed the most limits, or empty
 * @param pain whether anything hurt, in a sentence
 * @param urgent what to heed at once: this session's own pain, signs and falls
 * @param standing what to heed always
 * @param diary what the athlete entered that day, the sorest and most painful places first
 * @param stripWide the strip for a wide window
 * @param stripNarrow the strip for a narrow one
 * @param key what the marks mean
 * @param heights where form gives way
 * @param columns head of the table
 * @param landings each landing
 * @param chosen id of the landing to show first, or empty
 * @param shared axes and grey lines that charts lay behind their own
 * @param others falls and runs of steps, a line each
 * @param film the film beside it
 * @param sides left and right of this session
 * @param method how it was measured
 */
public record SessionView(
        String title,
        String who,
        String health,
        String sentence,
        String worst,
        String pain,
        List<String> urgent,
        List<String> standing,
        List<String> diary,
        Picture stripWide,
        Picture stripNarrow,
        List<MarkView> key,
        HeightView heights,
        List<ColumnGroup> columns,
        List<LandingView> landings,
        String chosen,
        List<Svg> shared,
        List<String> others,
        FilmView film,
        SidesView sides,
        MethodView method) {}

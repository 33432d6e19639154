package evenfall.report.html.view;

import evenfall.report.chart.Picture;
import evenfall.report.chart.Svg;
import java.util.List;

/**
 * One landing.
 *
 * @param id of its part of the page
 * @param number its number in the session
 * @param title its heading
 * @param mark its mark
 * @param at when, minutes and seconds
 * @param contactS when, s on the recording's clock as a plain number
 * @param side code of the foot, or {@code unknown}
 * @param foot the foot in words
 * @param height drop height with its unit
 * @param heightM drop height as a plain number, or empty
 * @param formCode code of the verdict, or {@code unknown}
 * @param form the verdict in a word
 * @param counts whether it counts (false: the coach left it out)
 * @param best number of the best landing to hold it against, or empty
 * @param reasons what speaks against it; none where it passed no limit
 * @param groups the figures by question
 * @param science figures for the scientist
 * @param remarks notes and what weakens the figures, a sentence each
 * @param bodies the line figures; none where there is no trace
 * @param chart its charts, or empty markup where there is no trace
 */
public record LandingView(
        String id,
        int number,
        String title,
        Svg mark,
        String at,
        String contactS,
        String side,
        String foot,
        String height,
        String heightM,
        String formCode,
        String form,
        boolean counts,
        String best,
        List<String> reasons,
        List<FigureGroup> groups,
        List<FigureView> science,
        List<String> remarks,
        List<BodyView> bodies,
        Picture chart) {}

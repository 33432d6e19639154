package evenfall.report.html.view;

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
 * @param foot the foot in words
 * @param height drop height with its unit
 * @param form the verdict in a word
 * @param counts whether it counts (false: the coach left it out)
 * @param reasons what speaks against it
 * @param groups the figures by question
 * @param science figures for the scientist
 * @param remarks notes and what weakens the figures, a sentence each
 * @param chart its charts, or empty markup where there is no trace
 */
public record LandingView(
        String id,
        int number,
        String title,
        Svg mark,
        String at,
        String foot,
        String height,
        String form,
        boolean counts,
        List<String> reasons,
        List<FigureGroup> groups,
        List<FigureView> science,
        List<String> remarks,
        Svg chart) {}

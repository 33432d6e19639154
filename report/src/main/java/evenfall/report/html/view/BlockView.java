package evenfall.report.html.view;

import evenfall.report.chart.Picture;
import java.util.List;

/**
 * The block page.
 *
 * @param title for the window's title and the head line
 * @param span from when to when
 * @param sentence the block in one breath
 * @param cautions what to heed before deciding, the gravest first
 * @param urgent how many of {@code cautions} come from the diary
 * @param changes what changed over the weeks, a sentence each
 * @param tiring what drifts within sessions, a sentence each
 * @param sides left against right, a sentence each
 * @param sidesWide the pairs for a wide window, or nothing
 * @param sidesNarrow the same for a narrow one
 * @param chartWide what was measured and done on one axis of days, for a wide window
 * @param chartNarrow the same for a narrow one
 * @param diaryWide what the diary says on the same axis of days, for a wide window; empty where it says nothing
 * @param diaryNarrow the same for a narrow one
 * @param feet heads of the columns of {@code heights}
 * @param heights landings by drop height and foot
 * @param sessions each session
 * @param diary the diary, day by day
 * @param next the next session: a head and its lines each; empty for a block that is in no log
 * @param rules the coach's rules by which the next session is argued; empty as {@code next}
 * @param method how to read it, a sentence each
 */
public record BlockView(
        String title,
        String span,
        String sentence,
        List<String> cautions,
        int urgent,
        List<List<Span>> changes,
        List<List<Span>> tiring,
        List<List<Span>> sides,
        Picture sidesWide,
        Picture sidesNarrow,
        Picture chartWide,
        Picture chartNarrow,
        Picture diaryWide,
        Picture diaryNarrow,
        List<MarkView> feet,
        List<RowView> heights,
        List<RowView> sessions,
        List<DayView> diary,
        List<DayView> next,
        List<String> rules,
        List<String> method) {}

package evenfall.report.html.view;

import java.util.List;

/**
 * The athlete's own sheet.
 *
 * @param title heading
 * @param sentence the last session in one breath
 * @param stop what stands above everything: open pain, signs, a clinician's limit; empty where nothing does
 * @param typical the landing that was most like the others
 * @param best the landing that stayed farthest within its limits
 * @param heights form height now and four weeks ago, in words
 * @param task one thing to work on
 * @param cautions what holds always
 */
public record SheetView(
        String title,
        String sentence,
        List<String> stop,
        Shown typical,
        Shown best,
        List<String> heights,
        String task,
        List<String> cautions) {

    /**
     * A landing that is shown.
     *
     * @param words which it is, or why there is none
     * @param bodies its three line figures; none where there is no such landing
     */
    public record Shown(String words, List<BodyView> bodies) {}
}

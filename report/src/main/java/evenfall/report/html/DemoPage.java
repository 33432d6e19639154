package evenfall.report.html;

import evenfall.report.html.view.DemoView;
import evenfall.report.html.view.LinkView;
import evenfall.report.words.Words;
import java.io.IOException;
import java.util.List;

/** The demo's first page: what is invented, and where to look. */
public final class DemoPage {

    private static final Words WORDS = Words.beside(DemoPage.class);

    private DemoPage() {}

    /**
     * Writes the page; to be kept as UTF-8 beside the pages it leads to.
     *
     * @param athlete the invented athlete's name
     * @param place the invented place
     * @param blockFile file name of the block page
     * @param sessions in order of time
     * @param heard what was heard while the last session was recorded live, in order
     * @throws IOException if {@code out} fails
     */
    public static void write(
            String athlete, String place, String blockFile, List<Entry> sessions, List<String> heard, Appendable out)
            throws IOException {
        DemoView view = new DemoView(
                WORDS.say("title.demo", athlete),
                place,
                blockFile,
                sessions.stream()
                        .map(entry -> new LinkView(entry.file(), entry.date(), entry.sentence()))
                        .toList(),
                heard);
        out.append(Pages.render("demo.jte", view, "page.js"));
    }

    /**
     * One session.
     *
     * @param date its date
     * @param file name of its page
     * @param sentence it in one breath
     */
    public record Entry(String date, String file, String sentence) {}
}

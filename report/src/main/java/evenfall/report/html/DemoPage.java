package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.html.view.DemoView;
import evenfall.report.html.view.LinkView;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
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
     * @param sessions in any order; the newest stands first
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
                        .sorted(Comparator.comparing(Entry::file).reversed())
                        .map(entry -> new LinkView(entry.file(), entry.date(), entry.remark()))
                        .toList(),
                heard);
        out.append(Pages.render("demo.jte", view, "page.js"));
    }

    /**
     * One session.
     *
     * @param date its date
     * @param file name of its page
     * @param remark it in one breath, what hurt first
     */
    public record Entry(String date, String file, String remark) {

        /** The line of a session; {@code file} comes later in the alphabet for a later day. */
        public static Entry of(String date, String file, Session session) {
            List<String> lines = new ArrayList<>(DiaryWords.hurt(session.diary()));
            lines.add(SessionSentence.of(session));
            return new Entry(date, file, String.join(" ", lines));
        }
    }
}

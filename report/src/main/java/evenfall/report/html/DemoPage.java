package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.html.view.DemoView;
import evenfall.report.html.view.LinkView;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.Session;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
     * @param days in any order; the newest stands first
     * @param heard what was heard while the last session was recorded live, in order
     * @throws IOException if {@code out} fails
     */
    public static void write(
            String athlete, String place, String blockFile, List<Entry> days, List<String> heard, Appendable out)
            throws IOException {
        DemoView view = new DemoView(
                WORDS.say("title.demo", athlete),
                place,
                blockFile,
                days.stream()
                        .sorted(Comparator.comparing(Entry::date).reversed())
                        .map(entry -> new LinkView(entry.file(), entry.date().words(), entry.remark()))
                        .toList(),
                heard);
        out.append(Pages.render("demo.jte", view, "page.js"));
    }

    /**
     * One day.
     *
     * @param date the session, or the day when something hurt without one
     * @param file name of its page, or null for a day without a session
     * @param remark it in one breath, what hurt first, what was noted last
     */
    public record Entry(SessionDate date, @Nullable String file, String remark) {

        /** The line of a session. */
        public static Entry of(SessionDate date, String file, Session session) {
            List<String> lines = new ArrayList<>(DiaryWords.hurt(session.diary()));
            lines.add(SessionSentence.of(session));
            session.diary().stream()
                    .map(DiaryEntry::note)
                    .filter(note -> note != null && !lines.contains(note))
                    .forEach(lines::add);
            return new Entry(date, file, String.join(" ", lines));
        }

        /** The line of a day without a session; empty where nothing hurt. */
        public static Optional<Entry> of(LocalDate day, List<DiaryEntry> diary) {
            List<String> lines = DiaryWords.hurt(diary);
            return lines.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Entry(new SessionDate(day, 0), null, String.join(" ", lines)));
        }
    }
}

package evenfall.report.handout;

import evenfall.ingest.words.Words;
import evenfall.report.html.SheetViews;
import evenfall.report.html.view.BodyView;
import evenfall.report.html.view.SheetView;
import evenfall.report.paper.Paper;
import evenfall.report.paper.TextStyle;
import java.util.List;

/** The athlete's own sheet: one page. */
public final class AthleteSheet {

    private static final Words WORDS = Words.beside(AthleteSheet.class);

    /** What stands on the page stands on paper in the same words. */
    private static final Words PAGE = Words.beside(SheetViews.class);

    private AthleteSheet() {}

    /** The paper of a sheet. */
    public static Paper of(SheetView view) {
        Paper paper = new Paper(view.title(), PAGE.say("language"));
        paper.heading(1, view.title());
        view.stop().forEach(line -> paper.text(TextStyle.URGENT, line));
        paper.text(TextStyle.SENTENCE, view.sentence());
        paper.heading(2, WORDS.say("sheet.task"));
        paper.text(TextStyle.SENTENCE, view.task());
        shown(paper, view.typical());
        shown(paper, view.best());
        paper.heading(2, WORDS.say("sheet.heights"));
        view.heights().forEach(line -> paper.text(TextStyle.LARGE, line));
        view.cautions().forEach(line -> paper.text(TextStyle.CAUTION, line));
        return paper;
    }

    private static void shown(Paper paper, SheetView.Shown shown) {
        paper.together(part -> columns(part.text(TextStyle.LARGE, shown.words()), shown.bodies()));
    }

    /** Figures beside one another, each over the side it is seen from. */
    private static void columns(Paper paper, List<BodyView> bodies) {
        if (bodies.isEmpty()) {
            return;
        }
        BodyView first = bodies.get(0);
        paper.beside(
                1.0 / bodies.size(),
                left -> left.picture(first.figure()).text(TextStyle.QUIET, first.title()),
                right -> columns(right, bodies.subList(1, bodies.size())));
    }
}

package evenfall.report.handout;

import evenfall.ingest.words.Words;
import evenfall.report.html.SessionPage;
import evenfall.report.html.view.BodyView;
import evenfall.report.html.view.FigureView;
import evenfall.report.html.view.LandingView;
import evenfall.report.html.view.MarkView;
import evenfall.report.html.view.SessionView;
import evenfall.report.paper.Paper;
import evenfall.report.paper.TableText;
import evenfall.report.paper.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A session on paper: the page's own words and pictures, all landings in a table, and charts and figures, kept together, of
 * each landing in which a limit was passed.
 */
public final class SessionHandout {

    private static final Words WORDS = Words.beside(SessionHandout.class);

    /** What stands on the page stands on paper in the same words. */
    private static final Words PAGE = Words.beside(SessionPage.class);

    private static final String HELD = "held";

    /** What of the width a landing's charts take; the rest is for its figures. */
    private static final double CHART_SHARE = 0.5;

    private SessionHandout() {}

    /** The paper of a session. */
    public static Paper of(SessionView view) {
        Paper paper = new Paper(view.title(), PAGE.say("language"));
        paper.heading(1, view.title());
        paper.text(TextStyle.QUIET, view.who() + " " + view.health());
        view.urgent().forEach(line -> paper.text(TextStyle.URGENT, line));
        paper.text(TextStyle.SENTENCE, view.sentence());
        if (!view.worst().isEmpty()) {
            paper.text(TextStyle.PLAIN, view.worst());
        }
        paper.text(TextStyle.PLAIN, view.pain());
        view.standing().forEach(line -> paper.text(TextStyle.CAUTION, line));
        if (!view.diary().isEmpty()) {
            paper.text(TextStyle.PLAIN, WORDS.say("diary", String.join(" ", view.diary())));
        }
        paper.together(part -> part.heading(2, PAGE.say("head.strip"))
                .picture(view.stripWide())
                .text(TextStyle.QUIET, view.key().stream().map(MarkView::words).collect(Collectors.joining("; "))));
        paper.together(part -> {
            part.heading(2, PAGE.say("head.heights"));
            view.heights().lines().forEach(line -> part.text(TextStyle.PLAIN, line));
            part.picture(view.heights().wide());
            part.text(TextStyle.CAUTION, view.heights().caution());
        });
        landings(paper, view.landings());
        paper.together(part -> {
            part.heading(2, PAGE.say("head.sides"));
            view.sides().lines().forEach(line -> part.text(TextStyle.PLAIN, line));
            part.picture(view.sides().wide());
        });
        view.landings().stream().filter(SessionHandout::isPassed).forEach(landing -> landing(paper, landing));
        paper.together(part -> {
            part.heading(2, PAGE.say("head.method"));
            view.method().lines().forEach(line -> part.text(TextStyle.QUIET, line));
            view.method().findings().forEach(line -> part.text(TextStyle.QUIET, line));
            view.method().limits().forEach(line -> part.text(TextStyle.QUIET, line));
        });
        return paper;
    }

    private static boolean isPassed(LandingView landing) {
        return landing.counts() && !landing.formCode().equals(HELD);
    }

    private static void landings(Paper paper, List<LandingView> landings) {
        paper.heading(2, PAGE.say("head.table"));
        if (landings.isEmpty()) {
            paper.text(TextStyle.PLAIN, WORDS.say("landings.none"));
            return;
        }
        List<List<String>> rows = landings.stream()
                .map(landing -> List.of(
                        Integer.toString(landing.number()),
                        landing.at(),
                        landing.foot(),
                        landing.height(),
                        landing.counts() ? landing.form() : WORDS.say("leftOut"),
                        String.join("; ", landing.reasons())))
                .toList();
        paper.table(new TableText(
                List.of(
                        PAGE.say("column.landing"),
                        PAGE.say("column.at"),
                        PAGE.say("column.foot"),
                        PAGE.say("column.height"),
                        PAGE.say("column.form"),
                        PAGE.say("column.reasons")),
                rows,
                List.of(1.0, 0.8, 1.4, 1.6, 1.1, 5.0)));
        if (landings.stream().anyMatch(SessionHandout::isPassed)) {
            paper.text(TextStyle.QUIET, WORDS.say("landings.passed"));
        }
    }

    private static void landing(Paper paper, LandingView landing) {
        paper.together(part -> {
            part.heading(
                    2,
                    WORDS.say(
                            "landing",
                            Integer.toString(landing.number()),
                            landing.at(),
                            landing.foot(),
                            landing.height(),
                            landing.form()));
            landing.reasons().forEach(line -> part.text(TextStyle.PLAIN, line));
            part.text(TextStyle.QUIET, String.join(" ", landing.remarks()));
            part.pictures(landing.bodies().stream().map(BodyView::figure).toList());
            landing.bodies()
                    .forEach(body -> part.text(
                            TextStyle.QUIET, PAGE.say("body.alone", body.title(), body.moment(), body.words())));
            part.beside(CHART_SHARE, left -> left.picture(landing.chart()), right -> right.table(figures(landing)));
        });
    }

    /** What is usual has a column where anything is known of it. */
    private static TableText figures(LandingView landing) {
        List<FigureView> figures = landing.groups().stream()
                .flatMap(group -> group.figures().stream())
                .toList();
        List<String> head = new ArrayList<>(
                List.of(WORDS.say("column.measure"), WORDS.say("column.value"), WORDS.say("column.limit")));
        boolean known = figures.stream().anyMatch(figure -> !figure.usual().isEmpty());
        if (known) {
            head.add(WORDS.say("column.usual"));
        }
        List<List<String>> rows = figures.stream()
                .map(figure -> known
                        ? List.of(figure.label(), value(figure), figure.limit(), figure.usual())
                        : List.of(figure.label(), value(figure), figure.limit()))
                .toList();
        return new TableText(head, rows, known ? List.of(1.1, 0.9, 0.8, 1.1) : List.of(1.2, 1.0, 0.8));
    }

    private static String value(FigureView figure) {
        return WORDS.say("value", figure.value(), figure.error()).strip();
    }
}

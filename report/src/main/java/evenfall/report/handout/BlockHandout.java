package evenfall.report.handout;

import evenfall.ingest.words.Words;
import evenfall.report.html.BlockPage;
import evenfall.report.html.view.BlockView;
import evenfall.report.html.view.DayView;
import evenfall.report.html.view.MarkView;
import evenfall.report.html.view.RowView;
import evenfall.report.html.view.Span;
import evenfall.report.paper.Paper;
import evenfall.report.paper.TableText;
import evenfall.report.paper.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A block on paper: the page's own words and pictures. */
public final class BlockHandout {

    private static final Words WORDS = Words.beside(BlockHandout.class);

    /** What stands on the page stands on paper in the same words. */
    private static final Words PAGE = Words.beside(BlockPage.class);

    private BlockHandout() {}

    /** The paper of a block. */
    public static Paper of(BlockView view) {
        Paper paper = new Paper(view.title(), PAGE.say("language"));
        paper.heading(1, view.title());
        paper.text(TextStyle.QUIET, view.span());
        for (int i = 0; i < view.urgent(); i++) {
            paper.text(TextStyle.URGENT, view.cautions().get(i));
        }
        paper.text(TextStyle.SENTENCE, view.sentence());
        view.cautions()
                .subList(view.urgent(), view.cautions().size())
                .forEach(line -> paper.text(TextStyle.CAUTION, line));
        next(paper, view);
        if (!view.sessions().isEmpty()) {
            course(paper, view);
            tables(paper, view);
        }
        diary(paper, view.diary());
        paper.together(part -> {
            part.heading(2, PAGE.say("head.block.method"));
            view.method().forEach(line -> part.text(TextStyle.QUIET, line));
        });
        return paper;
    }

    private static void course(Paper paper, BlockView view) {
        paper.together(part -> {
            part.heading(2, PAGE.say("head.block.sides"));
            view.sides().forEach(line -> part.text(TextStyle.PLAIN, sentence(line)));
            part.picture(view.sidesWide());
            if (!view.sidesWide().isEmpty()) {
                part.text(TextStyle.QUIET, PAGE.say("sides.called"));
            }
        });
        paper.heading(2, PAGE.say("head.block.weeks"));
        view.changes().forEach(line -> paper.text(TextStyle.PLAIN, sentence(line)));
        view.tiring().forEach(line -> paper.text(TextStyle.PLAIN, sentence(line)));
        paper.together(part -> part.heading(2, PAGE.say("head.block.chart")).picture(view.chartWide()));
        paper.picture(view.diaryWide());
    }

    private static String sentence(List<Span> spans) {
        return spans.stream().map(Span::words).collect(Collectors.joining());
    }

    private static void tables(Paper paper, BlockView view) {
        List<String> feet = new ArrayList<>();
        feet.add(PAGE.say("column.height"));
        view.feet().stream().map(MarkView::words).forEach(feet::add);
        feet.add(PAGE.say("column.last"));
        paper.together(part -> part.heading(2, PAGE.say("head.block.heights")).table(table(feet, view.heights())));
        paper.heading(2, PAGE.say("head.block.sessions"));
        paper.table(table(
                List.of(
                        PAGE.say("column.session"),
                        PAGE.say("column.landings"),
                        PAGE.say("column.left"),
                        PAGE.say("column.both"),
                        PAGE.say("column.right"),
                        PAGE.say("column.held"),
                        PAGE.say("column.heights"),
                        PAGE.say("column.effort")),
                view.sessions()));
    }

    private static TableText table(List<String> head, List<RowView> rows) {
        List<List<String>> cells = new ArrayList<>();
        for (RowView row : rows) {
            List<String> line = new ArrayList<>();
            line.add(row.head());
            line.addAll(row.cells());
            cells.add(line);
        }
        return new TableText(head, cells, head.stream().map(column -> 1.0).toList());
    }

    private static void diary(Paper paper, List<DayView> days) {
        if (days.isEmpty()) {
            return;
        }
        paper.heading(2, PAGE.say("head.block.diary"));
        List<List<String>> rows = days.stream()
                .map(day -> List.of(day.day(), String.join(" ", day.lines())))
                .toList();
        paper.table(
                new TableText(List.of(WORDS.say("column.day"), WORDS.say("column.entered")), rows, List.of(1.0, 5.0)));
    }

    private static void next(Paper paper, BlockView view) {
        if (view.next().isEmpty()) {
            return;
        }
        paper.heading(2, PAGE.say("head.block.next"));
        for (DayView day : view.next()) {
            paper.together(part -> {
                part.heading(3, day.day());
                day.lines().forEach(line -> part.text(TextStyle.PLAIN, line));
            });
        }
        paper.together(part -> {
            part.heading(3, PAGE.say("next.rules"));
            view.rules().forEach(line -> part.text(TextStyle.QUIET, line));
        });
    }
}

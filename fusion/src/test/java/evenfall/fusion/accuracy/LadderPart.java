package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** The page's tables of the ladder. */
final class LadderPart {

    /** What is shown of each rung. */
    static final List<Figure> SHOWN = List.of(
            Figure.CONTACT,
            Figure.FLIGHT,
            Figure.SPEED,
            Figure.DEPTH,
            Figure.COLLAPSE,
            Figure.ROTATION,
            Figure.OBLIQUITY,
            Figure.TILT,
            Figure.FLEXION,
            Figure.LEAN,
            Figure.TWIST,
            Figure.SPINE,
            Figure.SHIFT_LEFT,
            Figure.OVER_FORWARD,
            Figure.CLOCK);

    private LadderPart() {}

    /** Root mean square errors, a row for each rung. */
    static String errors(Map<Rung, LandingErrors> ladder) {
        return table(ladder, (figure, s) -> figure.shown(s.rms()));
    }

    /** How many in a hundred lie within two sigma. */
    static String coverage(Map<Rung, LandingErrors> ladder) {
        return table(ladder, (figure, s) -> MarkdownTable.percent(s.withinTwo()));
    }

    private static String table(Map<Rung, LandingErrors> ladder, BiFunction<Figure, ErrorSummary, String> cell) {
        List<String> head = new ArrayList<>(List.of("", "landings found"));
        SHOWN.forEach(figure -> head.add(figure.briefly()));
        MarkdownTable table = new MarkdownTable(head);
        ladder.forEach((rung, errors) -> {
            List<String> row = new ArrayList<>(List.of(rung.name(), found(errors)));
            SHOWN.forEach(figure -> row.add(cell.apply(figure, errors.summary(figure))));
            table.add(row);
        });
        return table.text();
    }

    private static String found(LandingErrors errors) {
        boolean right = errors.of(Figure.LANDINGS).stream().allMatch(one -> one.error() == 0);
        return right ? "all" : "not all";
    }
}

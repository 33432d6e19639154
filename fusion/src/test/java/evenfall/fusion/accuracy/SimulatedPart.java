package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** The page's tables of the simulated sessions. */
final class SimulatedPart {

    /** The truth tells these of the sensors that were worn. */
    private static final List<Figure> OTHERS_WITH_OTHER_SENSORS = List.of(Figure.PEAK, Figure.BODY_PEAK);

    private SimulatedPart() {}

    /** Each figure over all sessions. */
    static String overall(SimulatedRun run) {
        MarkdownTable table = new MarkdownTable(
                List.of("", "values", "missing", "rms", "bias", "largest", "within 1 sigma, %", "within 2 sigma, %"));
        LandingErrors all = run.all();
        for (Figure figure : sizes()) {
            ErrorSummary s = all.summary(figure);
            table.add(List.of(
                    figure.words(),
                    String.valueOf(s.count()),
                    String.valueOf(s.missing()),
                    figure.shown(s.rms()),
                    figure.shown(s.bias()),
                    figure.shown(s.largest()),
                    MarkdownTable.percent(s.withinOne()),
                    MarkdownTable.percent(s.withinTwo())));
        }
        return table.text();
    }

    /** Root mean square by session. */
    static String sessions(SimulatedRun run) {
        return rms(run.bySession());
    }

    /** Root mean square by what sessions have in common. */
    static String groups(SimulatedRun run) {
        return rms(run.groups());
    }

    /** Root mean square by what went wrong with other sensors. */
    static String copies(Map<String, LandingErrors> copies) {
        return table(copies, withOtherSensors(), (figure, s) -> figure.shown(s.rms()));
    }

    /** How many of these errors lie within one and two sigma, %. */
    static String copiesCoverage(Map<String, LandingErrors> copies) {
        List<Figure> figures = withOtherSensors();
        figures.removeIf(figure -> copies.values().stream()
                .allMatch(errors -> Double.isNaN(errors.summary(figure).withinOne())));
        return table(
                copies,
                figures,
                (figure, s) -> Double.isNaN(s.withinOne())
                        ? ""
                        : MarkdownTable.percent(s.withinOne()) + ", " + MarkdownTable.percent(s.withinTwo()));
    }

    private static List<Figure> withOtherSensors() {
        List<Figure> figures = sizes();
        figures.removeAll(OTHERS_WITH_OTHER_SENSORS);
        return figures;
    }

    private static String rms(Map<String, LandingErrors> columns) {
        return table(columns, sizes(), (figure, s) -> figure.shown(s.rms()));
    }

    /** A row a figure, a column a group. */
    private static String table(
            Map<String, LandingErrors> columns, List<Figure> figures, BiFunction<Figure, ErrorSummary, String> cell) {
        List<String> head = new ArrayList<>(List.of(""));
        head.addAll(columns.keySet());
        MarkdownTable table = new MarkdownTable(head);
        for (Figure figure : figures) {
            List<String> row = new ArrayList<>(List.of(figure.words()));
            columns.values().forEach(errors -> row.add(cell.apply(figure, errors.summary(figure))));
            table.add(row);
        }
        return table.text();
    }

    /** How often a landing and what is said of it in words is right. */
    static String counts(SimulatedRun run) {
        MarkdownTable table = new MarkdownTable(List.of("", "asked", "wrong"));
        LandingErrors all = run.all();
        for (Figure figure : Figure.values()) {
            if (figure.counts()) {
                long wrong =
                        all.of(figure).stream().filter(one -> one.error() != 0).count();
                table.add(List.of(figure.words(), String.valueOf(all.of(figure).size()), String.valueOf(wrong)));
            }
        }
        return table.text();
    }

    static List<Figure> sizes() {
        List<Figure> sizes = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            if (!figure.counts()) {
                sizes.add(figure);
            }
        }
        return sizes;
    }
}

package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.chart.Picture;
import evenfall.report.chart.SidesChart;
import evenfall.report.glossary.Glossary;
import evenfall.report.html.view.SidesView;
import evenfall.report.session.SessionLanding;
import evenfall.report.statistics.Medians;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Left and right of one session: landings on one foot, turned to that foot, so that an even person shows no difference.
 * One session decides nothing; its words only describe.
 */
final class SidesViews {

    private static final Words WORDS = Words.beside(SidesViews.class);

    /** A measure and whether it is stored with the left positive. */
    private record Sided(Figure figure, boolean leftPositive) {}

    private static final List<Sided> MEASURES = FigureList.GROUPS.stream()
            .filter(group -> group.question().equals("question.even"))
            .flatMap(group -> group.figures().stream())
            .filter(figure -> figure.unit().equals("unit.degrees"))
            .map(figure -> new Sided(figure, "side.left".equals(figure.plus())))
            .toList();

    private SidesViews() {}

    static SidesView of(List<SessionLanding> landings, int wide, int narrow) {
        List<SessionLanding> left = on(Side.LEFT, landings);
        List<SessionLanding> right = on(Side.RIGHT, landings);
        List<String> lines = new ArrayList<>();
        lines.add(WORDS.say("sides.counts", left.size(), right.size()));
        List<SidesChart.Row> rows = new ArrayList<>();
        for (Sided measure : MEASURES) {
            List<Double> onLeft = turned(measure, left, Side.LEFT);
            List<Double> onRight = turned(measure, right, Side.RIGHT);
            if (!onLeft.isEmpty() && !onRight.isEmpty()) {
                double leftMedian = median(onLeft);
                double rightMedian = median(onRight);
                String name = Glossary.name(measure.figure().term());
                rows.add(new SidesChart.Row(name, onLeft, onRight, leftMedian, rightMedian));
                lines.add(WORDS.say("sides.row", name, towards(leftMedian), towards(rightMedian)));
            }
        }
        if (rows.isEmpty()) {
            return new SidesView(List.of(lines.get(0)), Picture.NONE, Picture.NONE);
        }
        lines.add(WORDS.say("sides.caution"));
        return new SidesView(
                lines, new SidesChart(wide, rows).svg("sides-wide"), new SidesChart(narrow, rows).svg("sides-narrow"));
    }

    private static List<SessionLanding> on(Side side, List<SessionLanding> landings) {
        return landings.stream()
                .filter(event -> event.side() == side && !event.note().leftOut())
                .toList();
    }

    private static List<Double> turned(Sided measure, List<SessionLanding> landings, Side foot) {
        double sign = measure.leftPositive() == (foot == Side.LEFT) ? 1 : -1;
        return landings.stream()
                .map(event -> event.landing().measures())
                .filter(Objects::nonNull)
                .map((Measures measures) -> measure.figure().value(measures))
                .filter(Objects::nonNull)
                .map(value -> sign * value)
                .toList();
    }

    private static double median(List<Double> values) {
        return Medians.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static String towards(double degrees) {
        String size = Figures.size(degrees, Math.abs(degrees) < 9.95 ? 1 : 0);
        return size.equals("0.0") ? WORDS.say("sides.none") : WORDS.say(degrees > 0 ? "sides.to" : "sides.from", size);
    }
}

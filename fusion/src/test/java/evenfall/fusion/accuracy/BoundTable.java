package evenfall.fusion.accuracy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Bounds on errors, one a row: scenario, figure, bound, and what was measured when the bound was set. They lie 13 % above that, or
 * by as much as does not matter.
 */
final class BoundTable {

    static final String HEADER = "scenario,figure,bound,measured";

    private static final double MARGIN = 1.13;

    private BoundTable() {}

    /** A row. */
    record Bound(String scenario, Figure figure, double bound) {}

    static List<Bound> read(String resource) {
        return rows(resource, BoundTable::row);
    }

    /** What each line of a table below its header says. */
    static <T> List<T> rows(String resource, Function<String, T> row) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(BoundTable.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
            return in.lines().skip(1).map(row).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Bound row(String line) {
        int measured = line.lastIndexOf(',');
        int bound = line.lastIndexOf(',', measured - 1);
        int figure = line.lastIndexOf(',', bound - 1);
        String scenario = line.substring(0, figure).replace("\"", "");
        return new Bound(
                scenario,
                Figure.ofCode(line.substring(figure + 1, bound)),
                Double.parseDouble(line.substring(bound + 1, measured)));
    }

    /** The same rows with what is measured now, each bound drawn in where it can be, never out. */
    static String tightened(List<Bound> rows, Map<String, LandingErrors> now) {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (Bound row : rows) {
            LandingErrors errors = Objects.requireNonNull(now.get(row.scenario()), row.scenario());
            double measured = errors.summary(row.figure()).rms();
            double near = Math.max(MARGIN * measured, measured + row.figure().negligible());
            double bound = Math.min(row.bound(), near);
            text.append(String.format(
                    Locale.ROOT,
                    "\"%s\",%s,%.4g,%.4g%n",
                    row.scenario(),
                    row.figure().code(),
                    bound,
                    measured));
        }
        return text.toString();
    }
}

package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The page's table of the floor.
 *
 * @param sampling the knowing observer on perfect sensors
 * @param noise on sensors with a cheap one's noise
 * @param strap on perfect sensors under soft straps
 * @param simulated on the simulated sessions
 * @param program the program on the same landings of those
 */
record FloorPart(
        FloorRun.Floor sampling,
        FloorRun.Floor noise,
        FloorRun.Floor strap,
        FloorRun.Floor simulated,
        LandingErrors program) {

    /** Figures that have a floor. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            if (sampling.least().containsKey(figure)) {
                figures.add(figure);
            }
        }
        return figures;
    }

    /** Root mean squares by what is added, in the unit of the table of bounds. */
    Map<String, Double> steps(Figure figure) {
        Map<String, Double> steps = new LinkedHashMap<>();
        steps.put("sampling", rms(sampling, figure));
        steps.put("noise", rms(noise, figure));
        steps.put("strap", rms(strap, figure));
        steps.put("simulated", rms(simulated, figure));
        steps.put("program", program.summary(figure).rms());
        return steps;
    }

    private static double rms(FloorRun.Floor floor, Figure figure) {
        ErrorSummary summary = floor.least().get(figure);
        return summary == null ? Double.NaN : summary.rms();
    }

    String table() {
        MarkdownTable table = new MarkdownTable(List.of(
                "",
                "perfect sensors, 200 Hz",
                "with noise",
                "with a soft strap",
                "simulated sessions",
                "low-pass, Hz",
                "the program there",
                "mostly from"));
        for (Figure figure : figures()) {
            List<String> row = new ArrayList<>(List.of(figure.words()));
            Map<String, Double> steps = steps(figure);
            row.add(small(figure, steps.get("sampling")));
            row.add(small(figure, steps.get("noise")));
            row.add(small(figure, steps.get("strap")));
            row.add(small(figure, steps.get("simulated")));
            double low = simulated.smoothing().getOrDefault(figure, 0.0);
            row.add(low > 0 ? String.format(Locale.ROOT, "%.0f", low) : "none");
            row.add(small(figure, steps.get("program")));
            row.add(most(steps));
            table.add(row);
        }
        return table.text();
    }

    /** Enough digits for a small value. */
    private static String small(Figure figure, @Nullable Double value) {
        if (value == null || Double.isNaN(value)) {
            return "";
        }
        double v = figure.scaled(value);
        return String.format(Locale.ROOT, v < 0.01 ? "%.4f" : v < 1 ? "%.3f" : "%.2f", v);
    }

    /** Which step adds most to the square of the program's error. */
    private static String most(Map<String, Double> steps) {
        double sampling = steps.getOrDefault("sampling", Double.NaN);
        double noise = steps.getOrDefault("noise", Double.NaN);
        double floor = steps.getOrDefault("simulated", Double.NaN);
        double program = steps.getOrDefault("program", Double.NaN);
        Map<String, Double> added = new LinkedHashMap<>();
        added.put("sampling", sampling * sampling);
        added.put("noise", noise * noise - sampling * sampling);
        added.put("strap and the rest of the sensor", floor * floor - noise * noise);
        added.put("what the program must find itself", program * program - floor * floor);
        return added.entrySet().stream()
                .filter(entry -> Double.isFinite(entry.getValue()))
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }
}

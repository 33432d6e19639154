package evenfall.fusion.analysis;

import evenfall.fusion.event.Event;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Prints the root mean square error of each measure on the simulated sessions, and how often the truth is in sigma. */
final class SimulatedAccuracy {

    private SimulatedAccuracy() {}

    /** Sessions by name; all nine without arguments. {@code found} takes the finder's events instead of the true ones. */
    public static void main(String[] args) {
        List<String> names = new ArrayList<>(List.of(args));
        boolean found = names.remove("found");
        boolean each = names.remove("each");
        if (names.isEmpty()) {
            for (int k = 1; k <= 9; k++) {
                names.add("s" + k);
            }
        }
        Map<String, Map<String, List<LandingErrors.One>>> table = new LinkedHashMap<>();
        for (String name : names) {
            table.put(name, run(name, found, each).all());
        }
        print(table);
    }

    static LandingErrors run(String name, boolean found, boolean each) {
        SimulatedSession session = SimulatedSession.read(name);
        RecordingAnalysis analysis = analyse(session, found);
        LandingErrors errors = new LandingErrors();
        List<JsonNode> truths = new ArrayList<>();
        session.truth().get("landings").forEach(truths::add);
        for (Landing landing : analysis.landings()) {
            JsonNode truth = nearest(truths, landing.moments().contactS() + session.pelvisStartS());
            if (landing.measures() != null && truth != null) {
                errors.add(session, landing, truth);
            }
        }
        errors.put("landings", (double) analysis.landings().size(), truths.size(), null);
        clock(session, analysis, errors);
        System.out.println(name + " " + analysis.mounting() + " " + analysis.clock());
        analysis.findings().forEach(finding -> System.out.println("   " + finding));
        if (each) {
            errors.all().forEach((measure, list) -> {
                StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "   %-18s", measure));
                list.forEach(one -> line.append(String.format(Locale.ROOT, " %9.4f", one.error())));
                System.out.println(line);
            });
        }
        return errors;
    }

    private static @Nullable JsonNode nearest(List<JsonNode> truths, double contact) {
        JsonNode best = null;
        for (JsonNode t : truths) {
            if (Math.abs(t.get("t_contact_s").asDouble() - contact) < 0.2) {
                best = t;
            }
        }
        return best;
    }

    private static void clock(SimulatedSession session, RecordingAnalysis analysis, LandingErrors errors) {
        if (analysis.clock() == null) {
            return;
        }
        JsonNode map = session.truth().get("clock_map");
        for (double t = 0; t <= analysis.durationS(); t += analysis.durationS() / 4) {
            double truth = map.get("a").asDouble()
                    + map.get("b").asDouble() * (t + session.pelvisStartS())
                    - session.upperStartS();
            errors.put(
                    "clock ms",
                    1000 * (analysis.clock().toUpperBack(t) - truth),
                    0,
                    analysis.clock().sigmaMs());
        }
    }

    private static RecordingAnalysis analyse(SimulatedSession session, boolean found) {
        RecordingAnalyser analyser = new RecordingAnalyser(FilterKind.TWO_PASS);
        if (found) {
            return analyser.analyse(session.recording(), Progress.NONE);
        }
        SensorReading pelvis = SensorReading.of(session.recording().pelvis());
        List<Event> events = session.trueEvents();
        return analyser.analyse(
                session.recording(), pelvis, pelvis.orientation(FilterKind.TWO_PASS), events, Progress.NONE);
    }

    private static void print(Map<String, Map<String, List<LandingErrors.One>>> table) {
        Map<String, List<LandingErrors.One>> all = new LinkedHashMap<>();
        table.values()
                .forEach(session -> session.forEach(
                        (k, v) -> all.computeIfAbsent(k, x -> new ArrayList<>()).addAll(v)));
        StringBuilder head = new StringBuilder(String.format("%-20s", ""));
        table.keySet().forEach(name -> head.append(String.format("%9s", name)));
        System.out.println(head + "      all     mean  in 1s  in 2s  missing");
        all.forEach((measure, list) -> {
            StringBuilder line = new StringBuilder(String.format("%-20s", measure));
            table.values()
                    .forEach(session -> line.append(
                            String.format(Locale.ROOT, "%9.4f", rms(session.getOrDefault(measure, List.of())))));
            line.append(String.format(
                    Locale.ROOT,
                    "%9.4f%9.4f%7.0f%7.0f%9d",
                    rms(list),
                    list.stream()
                            .mapToDouble(LandingErrors.One::error)
                            .filter(Double::isFinite)
                            .average()
                            .orElse(0),
                    within(list, 1),
                    within(list, 2),
                    list.stream().filter(one -> Double.isNaN(one.error())).count()));
            System.out.println(line);
        });
    }

    static double rms(List<LandingErrors.One> list) {
        return Math.sqrt(list.stream()
                .mapToDouble(LandingErrors.One::error)
                .filter(Double::isFinite)
                .map(e -> e * e)
                .average()
                .orElse(Double.NaN));
    }

    private static double within(List<LandingErrors.One> list, double sigmas) {
        return 100
                * list.stream()
                        .filter(one -> Double.isFinite(one.error() / one.sigma()))
                        .mapToDouble(one -> Math.abs(one.error()) <= sigmas * one.sigma() ? 1 : 0)
                        .average()
                        .orElse(Double.NaN);
    }
}

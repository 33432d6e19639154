package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.RecordingAnalysis;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Prints the errors on the simulated sessions, for the one who changes the analysis. */
final class SimulatedAccuracy {

    private SimulatedAccuracy() {}

    /** Sessions by name, all nine without; {@code each} prints every error. */
    public static void main(String[] args) {
        List<String> names = new ArrayList<>(List.of(args));
        boolean each = names.remove("each");
        Map<String, LandingErrors> table = new LinkedHashMap<>();
        for (String name : names.isEmpty() ? SimulatedSession.NAMES : names) {
            SimulatedSession session =
                    SimulatedSession.read(OpenData.folder("landings").orElseThrow(), name);
            RecordingAnalysis analysis = session.analyse();
            table.put(name, session.errors(analysis));
            System.out.println(name + " " + analysis.mounting() + " " + analysis.clock());
            analysis.findings().forEach(finding -> System.out.println("   " + finding));
        }
        print(table, each);
    }

    private static void print(Map<String, LandingErrors> table, boolean each) {
        LandingErrors all = LandingErrors.together(table.values());
        StringBuilder head = new StringBuilder(String.format("%-20s", ""));
        table.keySet().forEach(name -> head.append(String.format("%9s", name)));
        System.out.println(head + "      all     mean  in 1s  in 2s  missing");
        for (Figure figure : Figure.values()) {
            StringBuilder line = new StringBuilder(String.format("%-20s", figure.code()));
            table.values()
                    .forEach(of -> line.append(String.format(
                            Locale.ROOT, "%9.4f", of.summary(figure).rms())));
            ErrorSummary s = all.summary(figure);
            line.append(String.format(
                    Locale.ROOT,
                    "%9.4f%9.4f%7.0f%7.0f%9d",
                    s.rms(),
                    s.bias(),
                    s.withinOne(),
                    s.withinTwo(),
                    s.missing()));
            System.out.println(line);
            if (each) {
                table.forEach((name, of) -> {
                    StringBuilder errors = new StringBuilder("   " + name);
                    of.of(figure).forEach(one -> errors.append(String.format(Locale.ROOT, " %9.4f", one.error())));
                    System.out.println(errors);
                });
            }
        }
    }
}

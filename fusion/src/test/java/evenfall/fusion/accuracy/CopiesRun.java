package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Errors on the simulated sessions as other sensors would have recorded them, by what else went wrong. */
final class CopiesRun {

    private static final String NAME = "other sensors";

    /** One copy of a session. */
    private record Copy(SimulatedSession original, OtherSensors.Trouble trouble, long seed) {

        SimulatedSession session() {
            return OtherSensors.of(original, trouble, seed);
        }
    }

    private CopiesRun() {}

    /**
     * Errors by trouble.
     *
     * @param times how often each session is copied with each trouble
     */
    static Map<String, LandingErrors> of(List<SimulatedSession> sessions, int times) {
        Map<String, LandingErrors> groups = new LinkedHashMap<>();
        long seed = 0;
        for (OtherSensors.Trouble trouble : OtherSensors.Trouble.values()) {
            List<Copy> copies = new ArrayList<>();
            for (SimulatedSession session : sessions) {
                for (int k = 0; k < times; k++) {
                    seed++;
                    if (OtherSensors.suits(session, trouble)) {
                        copies.add(new Copy(session, trouble, seed));
                    }
                }
            }
            groups.put(
                    NAME + (trouble == OtherSensors.Trouble.NONE ? "" : ", " + trouble.words()),
                    LandingErrors.together(copies.parallelStream()
                            .map(copy -> {
                                SimulatedSession worn = copy.session();
                                return worn.errors(worn.analyse());
                            })
                            .toList()));
        }
        return groups;
    }

    /** What the tables of bounds hold: the groups of a run, and each of its sessions once with each trouble. */
    static Map<String, LandingErrors> bounded(SimulatedRun run) {
        Map<String, LandingErrors> groups = new LinkedHashMap<>(run.groups());
        groups.putAll(of(run.sessions(), 1));
        return groups;
    }

    /** Prints root mean square errors and coverage; how often each session is copied with each trouble. */
    public static void main(String[] args) {
        Map<String, LandingErrors> groups = of(
                SimulatedSession.all(OpenData.folder("landings").orElseThrow()),
                args.length == 0 ? 2 : Integer.parseInt(args[0]));
        System.out.println(groups.keySet());
        Arrays.stream(Figure.values()).forEach(figure -> {
            StringBuilder line = new StringBuilder(String.format("%-20s", figure.code()));
            groups.values().forEach(errors -> {
                ErrorSummary s = errors.summary(figure);
                line.append(String.format(Locale.ROOT, " %8.4f %3.0f %3.0f", s.rms(), s.withinOne(), s.withinTwo()));
            });
            System.out.println(line);
        });
    }
}

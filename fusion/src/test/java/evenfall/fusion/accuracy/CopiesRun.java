package evenfall.fusion.accuracy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Errors on the simulated sessions as other sensors would have recorded them, by what else went wrong. */
final class CopiesRun {

    private static final String NAME = "other sensors";

    /** With these the bends are as asked for and the straps stay, if they were and did. */
    private static final Set<OtherSensors.Trouble> HARMLESS =
            EnumSet.of(OtherSensors.Trouble.NONE, OtherSensors.Trouble.GAPS, OtherSensors.Trouble.SAMPLES_LOST);

    private final List<Analysed> copies;

    /** One copy of a session. */
    private record Copy(SimulatedSession original, OtherSensors.Trouble trouble, long seed) {

        Analysed analysed() {
            SimulatedSession worn = OtherSensors.of(original, trouble, seed);
            return new Analysed(
                    trouble,
                    original.hasGaps(),
                    original.wellPrepared() && HARMLESS.contains(trouble),
                    worn.hasGaps(),
                    worn.errors(worn.analyse()),
                    worn.errors(worn.analyseAlone()));
        }
    }

    /**
     * What came of a copy.
     *
     * @param ownGaps whether time is missing in the original
     * @param wellPrepared whether the opening was as asked for and the straps stayed
     * @param gaps whether time is missing
     * @param errors with both sensors
     * @param alone as if the upper back had worn none
     */
    private record Analysed(
            OtherSensors.Trouble trouble,
            boolean ownGaps,
            boolean wellPrepared,
            boolean gaps,
            LandingErrors errors,
            LandingErrors alone) {

        /** Whether samples were lost one by one. */
        boolean lost() {
            return trouble == OtherSensors.Trouble.SAMPLES_LOST;
        }

        /** Whether gaps were put in. */
        boolean putIn() {
            return trouble == OtherSensors.Trouble.GAPS || trouble == OtherSensors.Trouble.GAPS_AND_NO_BENDS;
        }
    }

    private CopiesRun(List<Analysed> copies) {
        this.copies = copies;
    }

    /**
     * Copies and analyses all.
     *
     * @param times how often each session is copied with each trouble
     */
    static CopiesRun of(List<SimulatedSession> sessions, int times) {
        List<Copy> copies = new ArrayList<>();
        long seed = 0;
        for (OtherSensors.Trouble trouble : OtherSensors.Trouble.values()) {
            for (SimulatedSession session : sessions) {
                for (int k = 0; k < times; k++) {
                    seed++;
                    if (OtherSensors.suits(session, trouble)) {
                        copies.add(new Copy(session, trouble, seed));
                    }
                }
            }
        }
        return new CopiesRun(copies.parallelStream().map(Copy::analysed).toList());
    }

    /** By what went wrong besides. */
    Map<String, LandingErrors> byTrouble() {
        Map<String, LandingErrors> groups = new LinkedHashMap<>();
        for (OtherSensors.Trouble trouble : OtherSensors.Trouble.values()) {
            String words = trouble == OtherSensors.Trouble.NONE ? "" : ", " + trouble.words();
            groups.put(NAME + words, together(copy -> copy.trouble() == trouble));
        }
        return groups;
    }

    /** By what they have in common. */
    Map<String, LandingErrors> byKind() {
        Map<String, LandingErrors> groups = new LinkedHashMap<>();
        groups.put(SimulatedRun.ALL, together(copy -> true));
        groups.put(SimulatedRun.WELL_PREPARED, together(Analysed::wellPrepared));
        groups.put(SimulatedRun.BADLY_PREPARED, together(copy -> !copy.wellPrepared()));
        groups.put(SimulatedRun.WITHOUT_GAPS, together(copy -> !copy.gaps()));
        groups.put(SimulatedRun.WITH_GAPS, together(Analysed::gaps));
        groups.put(
                SimulatedRun.ALONE,
                LandingErrors.together(copies.stream().map(Analysed::alone).toList()));
        return groups;
    }

    /** By whose body it is and whether gaps were put in: two bodies differ by more than gaps do. */
    Map<String, LandingErrors> byBody() {
        Map<String, LandingErrors> groups = new LinkedHashMap<>();
        groups.put("five bodies, no gaps", together(copy -> !copy.ownGaps() && !copy.gaps()));
        groups.put("the five, gaps put in", together(copy -> !copy.ownGaps() && copy.putIn()));
        groups.put("four bodies, gaps of their own", together(copy -> copy.ownGaps() && !copy.putIn() && !copy.lost()));
        groups.put("the four, more put in", together(copy -> copy.ownGaps() && copy.putIn()));
        groups.put("all nine, gaps put in", together(Analysed::putIn));
        return groups;
    }

    private LandingErrors together(Predicate<Analysed> which) {
        return LandingErrors.together(
                copies.stream().filter(which).map(Analysed::errors).toList());
    }

    /** Each of a run's sessions once with each trouble. */
    static CopiesRun once(SimulatedRun run) {
        return of(run.sessions(), 1);
    }

    /** What the table of bounds holds: the groups of the run, and these by what went wrong. */
    Map<String, LandingErrors> bounded(SimulatedRun run) {
        Map<String, LandingErrors> groups = new LinkedHashMap<>(run.groups());
        groups.putAll(byTrouble());
        return groups;
    }

    /** What the table of coverage holds: the groups of the run, and these by what they have in common. */
    Map<String, LandingErrors> covered(SimulatedRun run) {
        Map<String, LandingErrors> groups = new LinkedHashMap<>(run.groups());
        byKind().forEach((kind, errors) -> groups.put(NAME + ", " + kind, errors));
        return groups;
    }

    /** Prints root mean square errors and coverage; how often each session is copied with each trouble. */
    public static void main(String[] args) {
        CopiesRun run = of(
                SimulatedSession.all(OpenData.folder("landings").orElseThrow()),
                args.length == 0 ? 2 : Integer.parseInt(args[0]));
        print(run.byTrouble());
        print(run.byKind());
    }

    private static void print(Map<String, LandingErrors> groups) {
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

package evenfall.report.round;

import evenfall.fusion.analysis.OpeningState;
import java.util.List;

/**
 * One step of the opening routine.
 *
 * @param name which
 * @param state how far it is
 * @param done how much of it is done: seconds of standing, bends, heel drops
 * @param asked how much is asked for
 */
public record RoutineStep(Name name, State state, int done, int asked) {

    /** The steps, in order. */
    public enum Name {
        STAND,
        BEND,
        DROP,
        CLOCKS
    }

    /** How far a step is. */
    public enum State {
        TO_DO,
        NOW,
        DONE
    }

    private static final int STAND_S = 5;
    private static final int TWICE = 2;
    private static final double CLOSE_MS = 5;

    /** All steps by what was seen so far. */
    static List<RoutineStep> of(OpeningState opening, boolean over) {
        int bends = opening.bends().values().stream()
                .mapToInt(Integer::intValue)
                .min()
                .orElse(0);
        boolean bent = bends >= TWICE;
        Double sigma = opening.clockSigmaMs();
        boolean tied = sigma != null && sigma <= CLOSE_MS;
        int stood = (int) Math.min(STAND_S, Math.max(opening.standingS(), opening.stanceS()));
        boolean[] done = {
            stood >= STAND_S || bends > 0, bent, opening.heelDrops() >= TWICE, tied && opening.heelDrops() >= TWICE
        };
        int[] counts = {done[0] ? STAND_S : stood, bends, opening.heelDrops(), tied ? 1 : 0};
        int[] asked = {STAND_S, TWICE, TWICE, 1};
        Name[] names = Name.values();
        RoutineStep[] steps = new RoutineStep[names.length];
        boolean before = true;
        for (int i = 0; i < names.length; i++) {
            boolean isDone = over || done[i];
            State state = isDone ? State.DONE : before ? State.NOW : State.TO_DO;
            before &= isDone;
            steps[i] = new RoutineStep(names[i], state, Math.min(counts[i], asked[i]), asked[i]);
        }
        return List.of(steps);
    }
}

package evenfall.fusion.event;

import java.util.ArrayList;
import java.util.List;

/** Gathers running and hopping contacts into runs. */
final class StepRuns {

    private final EventParams.Steps steps;
    private final FallRules falls;

    /**
     * A gatherer.
     *
     * @param falls what is a fall is no step
     */
    StepRuns(EventParams.Steps steps, FallRules falls) {
        this.steps = steps;
        this.falls = falls;
    }

    /** The runs among {@code descents} that are no landings. */
    List<Event> find(List<Descent> descents, List<Verdict> verdicts) {
        List<Event> runs = new ArrayList<>();
        List<Descent> run = new ArrayList<>();
        boolean jumped = false;
        for (int i = 0; i < descents.size(); i++) {
            Descent d = descents.get(i);
            Verdict verdict = verdicts.get(i);
            boolean none = verdict == Verdict.LANDING || falls.isFall(d, verdict);
            if (!none && d.strength() < steps.strength()) {
                continue;
            }
            if (none || (!run.isEmpty() && d.turn() - run.get(run.size() - 1).turn() > steps.gap())) {
                close(run, jumped, runs);
                jumped = false;
            }
            if (!none) {
                run.add(d);
                jumped |= verdict == Verdict.STEP;
            }
        }
        close(run, jumped, runs);
        return runs;
    }

    /** Ends a run: many contacts are one, and few of which one drops or jumps as a landing does. */
    private void close(List<Descent> run, boolean jumped, List<Event> runs) {
        int least = jumped ? steps.contactsJumped() : steps.contacts();
        if (run.size() >= least && medianLight(run) >= steps.light()) {
            Descent first = run.get(0);
            Descent last = run.get(run.size() - 1);
            Descent hardest = first;
            for (Descent d : run) {
                hardest = d.peakForce() > hardest.peakForce() ? d : hardest;
            }
            runs.add(new Event(
                    EventKind.STEPS, run.size(), first.takeoff(), first.contact(), hardest.peak(), last.braked()));
        }
        run.clear();
    }

    private static double medianLight(List<Descent> run) {
        double[] light = run.stream().mapToDouble(Descent::light).sorted().toArray();
        return light[light.length / 2];
    }
}

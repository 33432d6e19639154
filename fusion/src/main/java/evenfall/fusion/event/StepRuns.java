package evenfall.fusion.event;

import java.util.ArrayList;
import java.util.List;

/** Gathers running and hopping contacts into runs. */
final class StepRuns {

    private final EventParams.Steps steps;

    StepRuns(EventParams.Steps steps) {
        this.steps = steps;
    }

    /** The runs among {@code descents} that are no landings. */
    List<Event> find(List<Descent> descents, List<Verdict> verdicts) {
        List<Event> runs = new ArrayList<>();
        List<Descent> run = new ArrayList<>();
        for (int i = 0; i < descents.size(); i++) {
            Descent d = descents.get(i);
            if (verdicts.get(i) == Verdict.LANDING || verdicts.get(i) == Verdict.NOT_UPRIGHT) {
                close(run, runs);
            } else if (d.strength() >= steps.strength()) {
                if (!run.isEmpty() && d.turn() - run.get(run.size() - 1).turn() > steps.gap()) {
                    close(run, runs);
                }
                run.add(d);
            }
        }
        close(run, runs);
        return runs;
    }

    private void close(List<Descent> run, List<Event> runs) {
        if (run.size() >= steps.contacts() && medianLight(run) >= steps.light()) {
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

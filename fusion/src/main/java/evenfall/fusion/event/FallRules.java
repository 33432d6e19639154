package evenfall.fusion.event;

import java.util.ArrayList;
import java.util.List;

/** Finds falls: an impact after which the body no longer stands as before. */
final class FallRules {

    private final EventParams.Fall fall;

    FallRules(EventParams.Fall fall) {
        this.fall = fall;
    }

    /** The falls among {@code descents}; several impacts near one another are one fall. */
    List<Event> find(List<Descent> descents, List<Verdict> verdicts) {
        List<Event> falls = new ArrayList<>();
        double peakForce = 0;
        for (int i = 0; i < descents.size(); i++) {
            Descent d = descents.get(i);
            if (!isFall(d, verdicts.get(i))) {
                continue;
            }
            Event last = falls.isEmpty() ? null : falls.get(falls.size() - 1);
            if (last != null && d.turn() - last.endS() < fall.gap()) {
                double peak = d.peakForce() > peakForce ? d.peak() : last.peakS();
                falls.set(
                        falls.size() - 1,
                        new Event(EventKind.FALL, 1, last.startS(), last.contactS(), peak, d.braked()));
                peakForce = Math.max(peakForce, d.peakForce());
            } else {
                falls.add(new Event(EventKind.FALL, 1, d.takeoff(), d.contact(), d.peak(), d.braked()));
                peakForce = d.peakForce();
            }
        }
        return falls;
    }

    /** Whether a descent ends off the feet. */
    boolean isFall(Descent d, Verdict verdict) {
        return verdict == Verdict.NOT_UPRIGHT
                || (verdict != Verdict.LANDING
                        && d.tilt() >= fall.tilt()
                        && d.peakForce() >= fall.peak()
                        && d.fallen() >= fall.lost());
    }
}

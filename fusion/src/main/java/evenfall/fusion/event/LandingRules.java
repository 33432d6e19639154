package evenfall.fusion.event;

import evenfall.ingest.recording.Gravity;
import java.util.ArrayList;
import java.util.List;

/** Tells which descents are landings, each among its neighbours. */
final class LandingRules {

    private final EventParams params;
    private final List<Descent> descents;
    private final boolean[] counterMovement;

    /** Rules over {@code descents}, which are in order of time. */
    LandingRules(EventParams params, List<Descent> descents) {
        this.params = params;
        this.descents = descents;
        this.counterMovement = new boolean[descents.size()];
        for (int i = 0; i + 1 < descents.size(); i++) {
            counterMovement[i] = isCounterMovement(descents.get(i), descents.get(i + 1));
        }
    }

    /** One verdict a descent. */
    List<Verdict> verdicts() {
        List<Verdict> verdicts = new ArrayList<>(descents.size());
        for (int i = 0; i < descents.size(); i++) {
            verdicts.add(alone(i));
        }
        for (int i = 0; i < descents.size(); i++) {
            if (verdicts.get(i) == Verdict.LANDING && catchesOther(i, verdicts)) {
                verdicts.set(i, Verdict.CATCH);
            }
        }
        return verdicts;
    }

    private Verdict alone(int i) {
        Descent d = descents.get(i);
        if (!isDrop(d) && !isHop(d)) {
            return Verdict.TOO_GENTLE;
        }
        if (d.brake() < params.body().brakeShare() * d.fallen()) {
            return Verdict.NO_BRAKE;
        }
        if (amongSteps(i) && !isJumped(d)) {
            return Verdict.STEP;
        }
        if (!isRested(d) && !isLong(d)) {
            return Verdict.NO_REST;
        }
        double tilt = sinksOn(i) ? params.body().sunkTilt() : params.body().tilt();
        if (d.tilt() > tilt || d.swing() > params.body().swing()) {
            return Verdict.NOT_UPRIGHT;
        }
        return Verdict.LANDING;
    }

    /** Whether the person goes down again before coming to rest, without a jump. */
    private boolean sinksOn(int i) {
        Descent d = descents.get(i);
        for (int k = i + 1; k < descents.size() && descents.get(k).turn() < d.turn() + d.restAfter(); k++) {
            Descent next = descents.get(k);
            if (next.down() >= params.body().sinks()
                    && next.brakeRate() < params.drop().brake()) {
                return true;
            }
        }
        return false;
    }

    private boolean isRested(Descent d) {
        EventParams.Rest rest = params.rest();
        return d.restBefore() <= rest.before() && (d.restAfter() <= rest.after() || d.light() >= rest.goesOnLight());
    }

    private boolean isLong(Descent d) {
        return d.fallen() >= params.rest().longFall()
                && d.light() >= params.rest().longLight();
    }

    /** Whether it flew too long for a step or a failed attempt at standing up: each of several jumps in a row is landed. */
    private boolean isJumped(Descent d) {
        return isLong(d) && d.light() >= params.steps().flown();
    }

    private boolean isDrop(Descent d) {
        EventParams.Drop drop = params.drop();
        boolean shortBrake = d.brakeRate() >= drop.brake() || d.down() >= drop.sure();
        boolean noJump = d.upward() <= drop.upShare() * d.down() || (Double.isNaN(d.up()) && isLong(d));
        return d.down() >= drop.down() && d.light() >= drop.light() && shortBrake && noJump;
    }

    private boolean isHop(Descent d) {
        EventParams.Hop hop = params.hop();
        double up = d.upward();
        double swing = hop.swing() + hop.swingPerSpeed() * Math.max(0, up - hop.slight());
        if (d.brake() <= hop.evenBrake() * d.fallen() && d.fallen() <= hop.flown() * Gravity.STANDARD * d.light()) {
            swing = Math.max(swing, hop.flownSwing());
        }
        return up >= hop.up()
                && d.fallen() >= hop.lost()
                && d.light() >= hop.light()
                && d.down() >= hop.returned() * up
                && (d.brake() <= hop.brakeShare() * d.fallen() || isJumped(d))
                && d.swing() <= swing;
    }

    /** A crouch from rest whose brake is the push for the larger one that follows. */
    private boolean isCounterMovement(Descent one, Descent next) {
        EventParams.Crouch crouch = params.crouch();
        return one.fromRest()
                && next.fallenSinceCrest() > crouch.larger() * one.fallenSinceCrest()
                && next.turn() - one.turn() < crouch.within();
    }

    private boolean amongSteps(int i) {
        EventParams.Steps steps = params.steps();
        double turn = descents.get(i).turn();
        int from = i;
        int to = i;
        while (from > 0 && turn - descents.get(from - 1).turn() <= steps.around()) {
            from--;
        }
        while (to + 1 < descents.size() && descents.get(to + 1).turn() - turn <= steps.around()) {
            to++;
        }
        double own = Math.min(descents.get(i).fallen(), descents.get(i).brake());
        double first = 0;
        double second = 0;
        for (int k = from; k <= to; k++) {
            if (k != i && !counterMovement[k]) {
                double share = descents.get(k).strength() / own;
                if (share > steps.share() && Math.abs(descents.get(k).turn() - turn) <= steps.near()) {
                    return true;
                }
                second = Math.max(second, Math.min(first, share));
                first = Math.max(first, share);
            }
        }
        return second > steps.shareOfTwo();
    }

    private boolean catchesOther(int i, List<Verdict> verdicts) {
        EventParams.Steps steps = params.steps();
        Descent d = descents.get(i);
        for (int k = i - 1; k >= 0 && d.turn() - descents.get(k).turn() < steps.catching(); k--) {
            double share = d.upward() < steps.catchUp() ? steps.slightCatchShare() : steps.catchShare();
            if (verdicts.get(k) == Verdict.LANDING
                    && d.fallen() < share * descents.get(k).fallen()) {
                return true;
            }
        }
        return false;
    }
}

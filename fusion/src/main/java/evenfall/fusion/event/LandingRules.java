package evenfall.fusion.event;

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
        if (amongSteps(i)) {
            return Verdict.STEP;
        }
        boolean rested = d.restBefore() <= params.rest().before()
                && d.restAfter() <= params.rest().after();
        if (!rested && !isLong(d)) {
            return Verdict.NO_REST;
        }
        if (d.tilt() > params.body().tilt() || d.swing() > params.body().swing()) {
            return Verdict.NOT_UPRIGHT;
        }
        return Verdict.LANDING;
    }

    private boolean isLong(Descent d) {
        return d.fallen() >= params.rest().longFall()
                && d.light() >= params.rest().longLight();
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
        return up >= hop.up()
                && d.light() >= hop.light()
                && d.down() >= hop.returned() * up
                && d.brake() <= hop.brakeShare() * d.fallen()
                && d.swing() <= swing;
    }

    /** A crouch from rest whose brake is the push for the larger one that follows. */
    private boolean isCounterMovement(Descent one, Descent next) {
        return one.fromRest()
                && next.fallenSinceCrest() > 1.25 * one.fallenSinceCrest()
                && next.turn() - one.turn() < 0.8;
    }

    private boolean amongSteps(int i) {
        EventParams.Steps steps = params.steps();
        Descent d = descents.get(i);
        double own = Math.min(d.fallen(), d.brake());
        double strongestNear = 0;
        double first = 0;
        double second = 0;
        for (int k = i - 1; k >= 0 && d.turn() - descents.get(k).turn() <= steps.around(); k--) {
            double share = share(k, own);
            strongestNear =
                    d.turn() - descents.get(k).turn() <= steps.near() ? Math.max(strongestNear, share) : strongestNear;
            second = Math.max(second, Math.min(first, share));
            first = Math.max(first, share);
        }
        for (int k = i + 1; k < descents.size() && descents.get(k).turn() - d.turn() <= steps.around(); k++) {
            double share = share(k, own);
            strongestNear =
                    descents.get(k).turn() - d.turn() <= steps.near() ? Math.max(strongestNear, share) : strongestNear;
            second = Math.max(second, Math.min(first, share));
            first = Math.max(first, share);
        }
        return strongestNear > steps.share() || second > steps.shareOfTwo();
    }

    private double share(int k, double own) {
        return counterMovement[k] ? 0 : descents.get(k).strength() / own;
    }

    private boolean catchesOther(int i, List<Verdict> verdicts) {
        EventParams.Steps steps = params.steps();
        Descent d = descents.get(i);
        for (int k = i - 1; k >= 0 && d.turn() - descents.get(k).turn() < steps.catching(); k--) {
            if (verdicts.get(k) == Verdict.LANDING
                    && d.fallen() < steps.catchShare() * descents.get(k).fallen()) {
                return true;
            }
        }
        return false;
    }
}

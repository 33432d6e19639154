package evenfall.report.json;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Side;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.PeakForHeight;
import evenfall.report.form.Reason;
import evenfall.report.log.LandingNote;
import evenfall.report.session.SessionLanding;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** One event of a session as a JSON object; only landings carry measures. */
final class LandingNode {

    private LandingNode() {}

    static ObjectNode of(SessionLanding event) {
        ObjectNode node = JsonTree.object();
        Landing landing = event.landing();
        node.put("index", landing.index());
        node.put("kind", landing.kind().code());
        if (landing.count() != null) {
            node.put("count", landing.count().intValue());
        }
        moments(node, landing.moments());
        Measures measures = landing.measures();
        if (measures != null) {
            measures(node, measures);
            verdict(node, event.verdict());
        }
        JsonText.putAll(
                node, "flags", event.flags().stream().map(LandingFlag::code).toList());
        if (!event.note().saysNothing()) {
            note(node.putObject("note"), event.note());
        }
        if (event.approved()) {
            node.put("baseline", true);
        }
        return node;
    }

    static void note(ObjectNode node, LandingNote note) {
        Side side = note.side();
        JsonText.put(node, "side", side == null ? null : side.code());
        JsonText.put(node, "heightM", note.heightM());
        JsonText.put(node, "surface", note.surface());
        JsonText.put(node, "shoes", note.shoes());
        JsonText.put(node, "leaveOut", note.leaveOut());
        JsonText.put(node, "remark", note.remark());
    }

    private static void moments(ObjectNode node, Moments moments) {
        JsonText.put(node, "takeoffS", moments.takeoffS());
        JsonText.put(node, "contactS", moments.contactS());
        JsonText.put(node, "peakS", moments.peakS());
        JsonText.put(node, "lowestS", moments.lowestS());
        JsonText.put(node, "settledS", moments.settledS());
    }

    private static void measures(ObjectNode node, Measures measures) {
        Fall fall = measures.fall();
        JsonText.put(node, "flightS", fall.flightS());
        JsonText.put(node, "impactSpeedMS", fall.impactSpeedMS());
        JsonText.put(node, "dropHeightM", fall.dropHeightM());
        Impact impact = measures.impact();
        JsonText.put(node, "peakG", impact.peakG());
        JsonText.put(node, "peakUpperBackG", impact.peakUpperBackG());
        node.put("clipped", impact.clipped());
        estimate(node, "peakEstimatedG", impact.peakEstimatedG());
        JsonText.put(node, "riseMs", impact.riseMs());
        JsonText.put(node, "loadingRateGPerS", impact.loadingRateGPerS());
        Braking braking = measures.braking();
        JsonText.put(node, "depthM", braking.depthM());
        JsonText.put(node, "brakingS", braking.brakingS());
        JsonText.put(node, "meanBrakingG", braking.meanBrakingG());
        JsonText.put(node, "collapseDegPerS", braking.collapseDegPerS());
        Posture posture = measures.posture();
        angle(node, "trunkFlexionDeg", posture.trunkFlexion());
        angle(node, "trunkLeanDeg", posture.trunkLean());
        angle(node, "pelvicRotationDeg", posture.pelvicRotation());
        angle(node, "pelvicTiltDeg", posture.pelvicTilt());
        angle(node, "pelvicObliquityDeg", posture.pelvicObliquity());
        angle(node, "twistDeg", posture.twist());
        angle(node, "spineFlexionDeg", posture.spineFlexion());
        balance(node, measures.balance());
        sigma(node.putObject("sigma"), measures.sigma());
    }

    private static void angle(ObjectNode node, String name, @Nullable Excursion angle) {
        if (angle == null) {
            node.putNull(name);
            return;
        }
        ObjectNode group = node.putObject(name);
        JsonText.put(group, "contact", angle.contact());
        JsonText.put(group, "peak", angle.peak());
        JsonText.put(group, "lowest", angle.lowest());
        JsonText.put(group, "max", angle.max());
        JsonText.put(group, "change", angle.change());
        JsonText.put(group, "sigma", angle.sigma());
    }

    private static void balance(ObjectNode node, Balance balance) {
        estimate(node, "lateralShiftM", balance.lateralShift());
        estimate(node, "foreAftShiftM", balance.foreAftShift());
        OverFeet feet = balance.overFeet();
        if (feet == null) {
            node.putNull("overFeetM");
        } else {
            ObjectNode group = node.putObject("overFeetM");
            JsonText.put(group, "foreAftContact", feet.foreAftContact());
            JsonText.put(group, "foreAftLowest", feet.foreAftLowest());
            JsonText.put(group, "lateralContact", feet.lateralContact());
            JsonText.put(group, "lateralLowest", feet.lateralLowest());
            JsonText.put(group, "sigmaForeAft", feet.sigmaForeAft());
            JsonText.put(group, "sigmaLateral", feet.sigmaLateral());
        }
        JsonText.put(node, "stepsAfter", balance.stepsAfter());
        StepDirection direction = balance.stepDirection();
        JsonText.put(node, "stepDirection", direction == null ? null : direction.code());
        Side foot = balance.footSuggested();
        JsonText.put(node, "footSuggested", foot == null ? null : foot.code());
    }

    private static void estimate(ObjectNode node, String name, @Nullable Estimate estimate) {
        if (estimate == null) {
            node.putNull(name);
            return;
        }
        ObjectNode group = node.putObject(name);
        JsonText.put(group, "value", estimate.value());
        JsonText.put(group, "sigma", estimate.sigma());
    }

    private static void sigma(ObjectNode node, Sigma sigma) {
        JsonText.put(node, "contactS", sigma.contactS());
        JsonText.put(node, "flightS", sigma.flightS());
        JsonText.put(node, "impactSpeedMS", sigma.impactSpeedMS());
        JsonText.put(node, "dropHeightM", sigma.dropHeightM());
        JsonText.put(node, "peakG", sigma.peakG());
        JsonText.put(node, "depthM", sigma.depthM());
        JsonText.put(node, "meanBrakingG", sigma.meanBrakingG());
        JsonText.put(node, "collapseDegPerS", sigma.collapseDegPerS());
    }

    private static void verdict(ObjectNode node, @Nullable FormVerdict verdict) {
        Form form = verdict == null ? null : verdict.form();
        JsonText.put(node, "form", form == null ? null : form.code());
        JsonText.putAll(
                node,
                "reasons",
                verdict == null
                        ? List.of()
                        : verdict.reasons().stream().map(Reason::text).toList());
        PeakForHeight peak = verdict == null ? null : verdict.peak();
        if (peak == null) {
            node.putNull("peakForHeight");
        } else {
            ObjectNode group = node.putObject("peakForHeight");
            JsonText.put(group, "usualG", peak.usualG());
            JsonText.put(group, "limitG", peak.limitG());
            JsonText.put(group, "spreads", peak.spreads());
            group.put("atLeast", peak.atLeast());
            group.put("landings", peak.landings());
        }
    }
}

package evenfall.report.json;

import evenfall.fusion.event.EventKind;
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
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads one event of a document, the reverse of {@link LandingNode}; the verdict is not read but judged anew. */
final class LandingReader {

    private LandingReader() {}

    static Landing read(JsonNode node) {
        EventKind kind = Fields.coded(node, "kind", EventKind.values(), EventKind::code);
        Set<LandingFlag> flags = EnumSet.noneOf(LandingFlag.class);
        for (JsonNode code : Fields.array(node, "flags")) {
            LandingFlag flag = flag(code.asString());
            if (flag != LandingFlag.FORM_PARTIAL) {
                flags.add(flag);
            }
        }
        return new Landing(
                (int) Math.round(Fields.number(node, "index")),
                kind,
                new Moments(
                        Fields.numberOrNull(node, "takeoffS"),
                        Fields.number(node, "contactS"),
                        Fields.number(node, "peakS"),
                        Fields.numberOrNull(node, "lowestS"),
                        Fields.numberOrNull(node, "settledS")),
                node.has("count") ? Fields.wholeOrNull(node, "count") : null,
                kind == EventKind.LANDING ? measures(node) : null,
                flags);
    }

    private static LandingFlag flag(String code) {
        for (LandingFlag flag : LandingFlag.values()) {
            if (flag.code().equals(code)) {
                return flag;
            }
        }
        throw new IllegalArgumentException("flag '" + code + "' is not known");
    }

    private static Measures measures(JsonNode node) {
        return new Measures(
                new Fall(
                        Fields.numberOrNull(node, "flightS"),
                        Fields.numberOrNull(node, "impactSpeedMS"),
                        Fields.numberOrNull(node, "dropHeightM")),
                new Impact(
                        Fields.number(node, "peakG"),
                        Fields.numberOrNull(node, "peakUpperBackG"),
                        Fields.truth(node, "clipped"),
                        node.has("peakEstimatedG") ? estimate(node, "peakEstimatedG") : null,
                        Fields.numberOrNull(node, "riseMs"),
                        Fields.numberOrNull(node, "loadingRateGPerS")),
                new Braking(
                        Fields.numberOrNull(node, "depthM"),
                        Fields.numberOrNull(node, "brakingS"),
                        Fields.numberOrNull(node, "meanBrakingG"),
                        Fields.numberOrNull(node, "collapseDegPerS")),
                new Posture(
                        angle(node, "trunkFlexionDeg"),
                        angle(node, "trunkLeanDeg"),
                        angle(node, "pelvicRotationDeg"),
                        angle(node, "pelvicTiltDeg"),
                        angle(node, "pelvicObliquityDeg"),
                        angle(node, "twistDeg"),
                        angle(node, "spineFlexionDeg")),
                balance(node),
                sigma(Fields.object(node, "sigma")));
    }

    private static @Nullable Excursion angle(JsonNode landing, String name) {
        JsonNode node = Fields.objectOrNull(landing, name);
        if (node == null) {
            return null;
        }
        return new Excursion(
                Fields.number(node, "contact"),
                Fields.number(node, "peak"),
                Fields.numberOrNull(node, "lowest"),
                Fields.number(node, "max"),
                Fields.number(node, "change"),
                Fields.number(node, "sigma"));
    }

    private static Balance balance(JsonNode node) {
        return new Balance(
                estimate(node, "lateralShiftM"),
                estimate(node, "foreAftShiftM"),
                overFeet(node),
                Fields.wholeOrNull(node, "stepsAfter"),
                Fields.codedOrNull(node, "stepDirection", StepDirection.values(), StepDirection::code),
                Fields.codedOrNull(node, "footSuggested", Side.values(), Side::code));
    }

    private static @Nullable Estimate estimate(JsonNode landing, String name) {
        JsonNode node = Fields.objectOrNull(landing, name);
        if (node == null) {
            return null;
        }
        return new Estimate(Fields.number(node, "value"), Fields.number(node, "sigma"));
    }

    private static @Nullable OverFeet overFeet(JsonNode landing) {
        JsonNode node = Fields.objectOrNull(landing, "overFeetM");
        if (node == null) {
            return null;
        }
        return new OverFeet(
                Fields.number(node, "foreAftContact"),
                Fields.numberOrNull(node, "foreAftLowest"),
                Fields.number(node, "lateralContact"),
                Fields.numberOrNull(node, "lateralLowest"),
                Fields.number(node, "sigmaForeAft"),
                Fields.number(node, "sigmaLateral"));
    }

    private static Sigma sigma(JsonNode node) {
        return new Sigma(
                Fields.number(node, "contactS"),
                Fields.numberOrNull(node, "flightS"),
                Fields.numberOrNull(node, "impactSpeedMS"),
                Fields.numberOrNull(node, "dropHeightM"),
                Fields.number(node, "peakG"),
                Fields.numberOrNull(node, "depthM"),
                Fields.numberOrNull(node, "meanBrakingG"),
                Fields.numberOrNull(node, "collapseDegPerS"));
    }
}

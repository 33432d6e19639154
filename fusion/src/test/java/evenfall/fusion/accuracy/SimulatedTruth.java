package evenfall.fusion.accuracy;

import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.OverFeetTruth;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads what the open simulated sessions say of their landings. */
final class SimulatedTruth {

    private SimulatedTruth() {}

    /**
     * One landing.
     *
     * @param stance angles of the quiet stance by segment, deg, which the truth counts from the model's zero
     * @param pelvisStartS what the pelvis's clock showed at its first sample
     */
    static TrueLanding landing(JsonNode t, JsonNode stance, double pelvisStartS) {
        JsonNode peak = t.get("peak_pelvis");
        JsonNode shift = t.get("pelvis_displacement_contact_to_300ms");
        return new TrueLanding(
                number(t, "t_contact_s") - pelvisStartS,
                number(t, "flight_time_s"),
                number(t, "t_lowest_s") - pelvisStartS,
                t.get("t_settled_s").isNumber() ? number(t, "t_settled_s") - pelvisStartS : null,
                -number(t.get("pelvis_velocity_at_contact_mps"), "vertical"),
                number(t, "pelvis_drop_contact_to_lowest_m"),
                number(peak.get("sensor"), "peak_recorded_g"),
                number(peak, "rigid_raw_g"),
                peak.get("sensor").get("saturated").asBoolean(),
                number(t, "collapse_speed_dps"),
                angles(t, stance),
                number(shift, "forward_m"),
                number(shift, "left_m"),
                overFeet(t.get("over_feet")),
                t.get("step_or_hop_back").asBoolean() || t.get("airborne_again").asBoolean());
    }

    private static Map<BodyAngle, TrueLanding.Angle> angles(JsonNode t, JsonNode stance) {
        Map<BodyAngle, TrueLanding.Angle> angles = new EnumMap<>(BodyAngle.class);
        double pelvisTilt = number(stance.get("pelvis"), "tilt");
        double trunkFlexion = number(stance.get("thorax"), "tilt");
        angles.put(BodyAngle.PELVIC_ROTATION, angle(t, "pelvis_yaw_change", 0));
        angles.put(BodyAngle.PELVIC_OBLIQUITY, angle(t, "pelvis_lean", number(stance.get("pelvis"), "lean")));
        angles.put(BodyAngle.PELVIC_TILT, angle(t, "pelvis_tilt", pelvisTilt));
        angles.put(BodyAngle.TRUNK_FLEXION, angle(t, "trunk_flexion", trunkFlexion));
        angles.put(BodyAngle.TRUNK_LEAN, angle(t, "trunk_lean", number(stance.get("thorax"), "lean")));
        angles.put(BodyAngle.TWIST, angle(t, "twist", 0));
        angles.put(BodyAngle.SPINE_FLEXION, angle(t, "spine_flexion", trunkFlexion - pelvisTilt));
        return angles;
    }

    private static TrueLanding.Angle angle(JsonNode t, String key, double stance) {
        double contact = number(t.get("angles_at_contact"), key);
        JsonNode range = t.get("excursion_0_600ms").get(key);
        return new TrueLanding.Angle(contact - stance, number(range, "max") - contact, number(range, "min") - contact);
    }

    private static @Nullable OverFeetTruth overFeet(@Nullable JsonNode over) {
        if (over == null || over.isNull()) {
            return null;
        }
        JsonNode contact = over.get("contact");
        boolean low = over.hasNonNull("lowest");
        return new OverFeetTruth(
                number(contact, "forward_m"),
                low ? number(over.get("lowest"), "forward_m") : Double.NaN,
                number(contact, "left_m"),
                low ? number(over.get("lowest"), "left_m") : Double.NaN);
    }

    private static double number(JsonNode node, String key) {
        return node.get(key).asDouble();
    }
}

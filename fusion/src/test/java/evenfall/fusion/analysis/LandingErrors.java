package evenfall.fusion.analysis;

import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Errors of each measure against the simulation's truth, with the sigma that was stated for it where there is one. */
final class LandingErrors {

    /** One error; sigma is NaN where none is stated. */
    record One(double error, double sigma) {}

    private final Map<String, List<One>> errors = new LinkedHashMap<>();

    Map<String, List<One>> all() {
        return errors;
    }

    void put(String measure, @Nullable Double value, double truth, @Nullable Double sigma) {
        errors.computeIfAbsent(measure, k -> new ArrayList<>())
                .add(new One(value == null ? Double.NaN : value - truth, sigma == null ? Double.NaN : sigma));
    }

    void add(SimulatedSession session, Landing landing, JsonNode t) {
        Measures m = landing.measures();
        if (m == null) {
            throw new IllegalArgumentException("a landing without measures");
        }
        double zero = session.pelvisStartS();
        var moments = landing.moments();
        put(
                "contact s",
                moments.contactS(),
                t.get("t_contact_s").asDouble() - zero,
                m.sigma().contactS());
        put(
                "flight s",
                m.fall().flightS(),
                t.get("flight_time_s").asDouble(),
                m.sigma().flightS());
        put("lowest s", moments.lowestS(), t.get("t_lowest_s").asDouble() - zero, null);
        if (t.get("t_settled_s").isNumber()) {
            put("settled s", moments.settledS(), t.get("t_settled_s").asDouble() - zero, null);
        }
        put(
                "speed m/s",
                m.fall().impactSpeedMS(),
                -t.get("pelvis_velocity_at_contact_mps").get("vertical").asDouble(),
                m.sigma().impactSpeedMS());
        put(
                "depth m",
                m.braking().depthM(),
                t.get("pelvis_drop_contact_to_lowest_m").asDouble(),
                m.sigma().depthM());
        JsonNode peak = t.get("peak_pelvis").get("sensor");
        double recorded = peak.get("peak_recorded_g").asDouble();
        put("peak %", 100 * (m.impact().peakG() / recorded - 1), 0, null);
        put("clipped", m.impact().clipped() ? 1.0 : 0.0, peak.get("saturated").asBoolean() ? 1 : 0, null);
        put(
                "collapse deg/s",
                m.braking().collapseDegPerS(),
                t.get("collapse_speed_dps").asDouble(),
                m.sigma().collapseDegPerS());
        var p = m.posture();
        change("rotation", p.pelvicRotation(), t, "pelvis_yaw_change");
        change("obliquity", p.pelvicObliquity(), t, "pelvis_lean");
        change("tilt", p.pelvicTilt(), t, "pelvis_tilt");
        change("flexion", p.trunkFlexion(), t, "trunk_flexion");
        change("lean", p.trunkLean(), t, "trunk_lean");
        change("twist", p.twist(), t, "twist");
        change("spine", p.spineFlexion(), t, "spine_flexion");
        JsonNode stance = session.truth().get("stance_angles_deg");
        atContact(
                "tilt",
                p.pelvicTilt(),
                t,
                "pelvis_tilt",
                stance.get("pelvis").get("tilt").asDouble());
        atContact(
                "obliquity",
                p.pelvicObliquity(),
                t,
                "pelvis_lean",
                stance.get("pelvis").get("lean").asDouble());
        atContact(
                "flexion",
                p.trunkFlexion(),
                t,
                "trunk_flexion",
                stance.get("thorax").get("tilt").asDouble());
        atContact(
                "lean",
                p.trunkLean(),
                t,
                "trunk_lean",
                stance.get("thorax").get("lean").asDouble());
        JsonNode shift = t.get("pelvis_displacement_contact_to_300ms");
        Estimate lateral = m.balance().lateralShift();
        Estimate foreAft = m.balance().foreAftShift();
        put("shift left m", value(lateral), shift.get("left_m").asDouble(), lateral == null ? null : lateral.sigma());
        put("shift fwd m", value(foreAft), shift.get("forward_m").asDouble(), foreAft == null ? null : foreAft.sigma());
        OverFeet feet = m.balance().overFeet();
        JsonNode over = t.get("over_feet");
        put("feet moved", feet == null ? 1.0 : 0.0, over == null || over.isNull() ? 1 : 0, null);
        if (feet != null && over != null && !over.isNull()) {
            put(
                    "over fwd m",
                    feet.foreAftContact(),
                    over.get("contact").get("forward_m").asDouble(),
                    feet.sigmaForeAft());
            put(
                    "over left m",
                    feet.lateralContact(),
                    over.get("contact").get("left_m").asDouble(),
                    feet.sigmaLateral());
            if (over.hasNonNull("lowest")) {
                put(
                        "over fwd low m",
                        feet.foreAftLowest(),
                        over.get("lowest").get("forward_m").asDouble(),
                        feet.sigmaForeAft());
                put(
                        "over left low m",
                        feet.lateralLowest(),
                        over.get("lowest").get("left_m").asDouble(),
                        feet.sigmaLateral());
            }
        }
        Integer steps = m.balance().stepsAfter();
        put(
                "stepped",
                steps == null ? null : steps > 0 ? 1.0 : 0.0,
                t.get("step_or_hop_back").asBoolean() || t.get("airborne_again").asBoolean() ? 1 : 0,
                null);
    }

    private static @Nullable Double value(@Nullable Estimate e) {
        return e == null ? null : e.value();
    }

    private void change(String name, @Nullable Excursion e, JsonNode t, String key) {
        JsonNode range = t.get("excursion_0_600ms").get(key);
        double contact = t.get("angles_at_contact").get(key).asDouble();
        double up = range.get("max").asDouble() - contact;
        double down = range.get("min").asDouble() - contact;
        double truth = Math.abs(up) > Math.abs(down) ? up : down;
        // Where both ways are nearly as far, either may be the farther one: the nearer to the estimate counts.
        if (e != null && Math.abs(Math.abs(up) - Math.abs(down)) < 1) {
            truth = Math.abs(e.change() - up) < Math.abs(e.change() - down) ? up : down;
        }
        put("d " + name + " deg", e == null ? null : e.change(), truth, e == null ? null : e.sigma());
    }

    private void atContact(String name, @Nullable Excursion e, JsonNode t, String key, double stance) {
        put(
                name + " at contact",
                e == null ? null : e.contact(),
                t.get("angles_at_contact").get(key).asDouble() - stance,
                null);
    }
}

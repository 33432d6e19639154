package evenfall.fusion.accuracy;

import evenfall.fixtures.sensor.AxisErrors;
import evenfall.fixtures.sensor.Mount;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.sensor.Triple;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * A sensor's samples for one who knows how it is mounted, what its clock does and what is constantly wrong with it.
 *
 * @param time of the truth, s
 * @param force segment axes, m/s²
 * @param rate segment axes, rad/s
 */
record KnownSamples(List<Double> time, List<Vector3> force, List<Vector3> rate) {

    private static final double GRAVITY = 9.80665;

    /** What the synthesiser's sensor recorded, less its bias, drift and scale errors (its cross errors are too small to matter). */
    static KnownSamples of(SensorSignals s, SensorModel model) {
        Mount mount = model.mount();
        KnownSamples known = new KnownSamples(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < s.size(); i++) {
            double t = s.trueTime()[i];
            double reading = model.clock().read(t);
            known.time.add(t);
            known.force.add(right(
                    new double[] {s.acceleration(0)[i], s.acceleration(1)[i], s.acceleration(2)[i]},
                    model.accelerometer(),
                    reading,
                    mount,
                    t));
            known.rate.add(right(
                    new double[] {s.turnRate(0)[i], s.turnRate(1)[i], s.turnRate(2)[i]},
                    model.gyroscope(),
                    reading,
                    mount,
                    t));
        }
        return known;
    }

    private static Vector3 right(double[] v, AxisErrors e, double reading, Mount mount, double t) {
        Triple seen = mount.at(t)
                .apply(new Triple(
                        (v[0] - e.bias().x() - e.drift().x() * reading)
                                / (1 + e.scale().x()),
                        (v[1] - e.bias().y() - e.drift().y() * reading)
                                / (1 + e.scale().y()),
                        (v[2] - e.bias().z() - e.drift().z() * reading)
                                / (1 + e.scale().z())));
        return new Vector3(seen.x(), seen.y(), seen.z());
    }

    /** What a simulated session's sensor recorded. */
    static KnownSamples of(SimulatedSession session, Place place, SensorStream s) {
        JsonNode sensor = session.truth().get("sensors").get(place == Place.PELVIS ? "pelvis" : "upper_back");
        Quaternion mount = quaternion(sensor.get("mount_quat_sensor_to_segment_wxyz"));
        Vector3 forceBias = vector(sensor.get("accel_bias_g")).times(GRAVITY);
        Vector3 forceScale = vector(sensor.get("accel_scale"));
        Vector3 rateBias = vector(sensor.get("gyro_bias_dps")).times(Math.toRadians(1));
        Vector3 rateBiasEnd = vector(sensor.get("gyro_bias_end_dps")).times(Math.toRadians(1));
        Vector3 rateScale = vector(sensor.get("gyro_scale"));
        KnownSamples known = new KnownSamples(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        double rate = sensor.get("rate_hz").asDouble();
        double shift = evenShift(s, rate);
        JsonNode map = session.truth().get("clock_map");
        for (int i = 0; i < s.size(); i++) {
            // Samples are taken evenly; only what is written of their times jitters.
            double own = s.clockStartS() + Math.rint((s.time(i) - shift) * rate) / rate + shift;
            double t = place == Place.PELVIS
                    ? own
                    : (own - map.get("a").asDouble()) / map.get("b").asDouble();
            Vector3 drifted = rateBias.plus(rateBiasEnd.minus(rateBias).times(s.time(i) / s.durationS()));
            known.time.add(t);
            known.force.add(mount.rotate(over(new Vector3(s.ax(i), s.ay(i), s.az(i)).minus(forceBias), forceScale)));
            known.rate.add(mount.rotate(over(new Vector3(s.gx(i), s.gy(i), s.gz(i)).minus(drifted), rateScale)));
        }
        return known;
    }

    /** Mean of what stamps lie beside an even grid that begins at the first. */
    private static double evenShift(SensorStream s, double rate) {
        double sum = 0;
        for (int i = 0; i < s.size(); i++) {
            sum += s.time(i) - Math.rint(s.time(i) * rate) / rate;
        }
        return sum / s.size();
    }

    private static Vector3 over(Vector3 v, Vector3 scale) {
        return new Vector3(v.x() / scale.x(), v.y() / scale.y(), v.z() / scale.z());
    }

    private static Vector3 vector(JsonNode n) {
        return new Vector3(n.get(0).asDouble(), n.get(1).asDouble(), n.get(2).asDouble());
    }

    private static Quaternion quaternion(JsonNode n) {
        return new Quaternion(
                        n.get(0).asDouble(),
                        n.get(1).asDouble(),
                        n.get(2).asDouble(),
                        n.get(3).asDouble())
                .normalised();
    }
}

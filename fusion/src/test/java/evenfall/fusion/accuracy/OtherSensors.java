package evenfall.fusion.accuracy;

import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Rotations;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import tools.jackson.databind.JsonNode;

/**
 * A simulated session as other sensors would have recorded it: what the truth says of the sensors' errors is taken out and others of
 * the same size are put in, the sensors are put on another way, and one more thing goes wrong. The bodies and what they did, the
 * straps, the clocks, drift and noise stay.
 */
final class OtherSensors {

    /** What goes wrong besides. */
    enum Trouble {
        NONE,
        NO_BENDS,
        ONE_BEND,
        GAPS,
        GAPS_AND_NO_BENDS,
        STRAP_MOVES,
        NO_ROUTINE,
        SAMPLES_LOST;

        String words() {
            return toString().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private static final double GRAVITY = 9.80665;

    /** Largest errors of an axis, those of the given sessions. */
    private static final double FORCE_BIAS = 0.03 * GRAVITY;

    private static final double TURN_BIAS = Math.toRadians(1.5);
    private static final double SCALE = 0.01;

    /** How far a sensor may sit from the nearest of its 24 quarter turns, rad. */
    private static final double BESIDE = Math.toRadians(25);

    /** A bend lasts while the trunk is tipped by more, rad. */
    private static final double BENT = Math.toRadians(10);

    private static final double BEFORE_THE_KNOCKS_S = 2;
    /** The stance on the box has begun. */
    private static final double BEFORE_THE_FIRST_DROP_S = 2.5;

    private static final double SHORTEST_GAP_S = 0.02;
    private static final double LONGEST_GAP_S = 0.075;
    private static final int GAPS = 6;
    /** So many of all samples are lost, one by one. */
    private static final double LOST = 0.05;

    private static final double LEAST_SLIP = Math.toRadians(6);
    private static final double LARGEST_SLIP = Math.toRadians(14);
    /** A strap moves while the person walks back to the box. */
    private static final double SLIP_AFTER_LANDING_S = 6;

    private final SimulatedSession original;
    private final Trouble trouble;
    private final SplittableRandom random;

    private OtherSensors(SimulatedSession original, Trouble trouble, long seed) {
        this.original = original;
        this.trouble = trouble;
        this.random = new SplittableRandom(seed);
    }

    /** The session with other sensors; the same seed gives the same. */
    static SimulatedSession of(SimulatedSession original, Trouble trouble, long seed) {
        return new OtherSensors(original, trouble, seed).make();
    }

    /** Whether a session can have it: its strap moves once, its bends are there to be left out. */
    static boolean suits(SimulatedSession session, Trouble trouble) {
        return switch (trouble) {
            case STRAP_MOVES -> session.truth().get("strap_slip").isNull();
            case ONE_BEND -> bends(session).size() == 2;
            case NO_BENDS, NO_ROUTINE, GAPS_AND_NO_BENDS -> !bends(session).isEmpty();
            default -> true;
        };
    }

    private SimulatedSession make() {
        SensorStream pelvis = original.recording().pelvis().stream();
        SensorStream upper = Objects.requireNonNull(original.recording().upperBack()).stream();
        double begin = begin();
        boolean pelvisSlips = random.nextBoolean();
        SensorStream otherPelvis = worn(pelvis, "pelvis", original.pelvisStartS(), begin, pelvisSlips, gaps(t -> t));
        SensorStream otherUpper = worn(
                upper,
                "upper_back",
                original.upperStartS(),
                upperBackClock(begin),
                !pelvisSlips,
                gaps(this::upperBackClock));
        return new SimulatedSession(
                original.name() + " " + trouble,
                original.folder(),
                new Recording(
                        new SensorRecording("pelvis", otherPelvis, null, List.of()),
                        new SensorRecording("upper back", otherUpper, null, List.of())),
                original.truth(),
                otherPelvis.clockStartS(),
                otherUpper.clockStartS());
    }

    private double upperBackClock(double pelvisClockS) {
        return original.toUpperBack(pelvisClockS - original.pelvisStartS()) + original.upperStartS();
    }

    /** When the recording begins, s on the pelvis's clock. */
    private double begin() {
        return switch (trouble) {
            case NO_BENDS, GAPS_AND_NO_BENDS ->
                original.truth().get("sync_knocks_s").get(0).asDouble() - BEFORE_THE_KNOCKS_S;
            case NO_ROUTINE ->
                original.truth().get("landings").get(0).get("t_takeoff_s").asDouble() - BEFORE_THE_FIRST_DROP_S;
            case ONE_BEND -> {
                List<double[]> bends = bends(original);
                yield (bends.get(0)[1] + bends.get(1)[0]) / 2;
            }
            default -> Double.NEGATIVE_INFINITY;
        };
    }

    /** Beginning and end of each, s on the pelvis's clock. */
    private static List<double[]> bends(SimulatedSession session) {
        double knocks = session.truth().get("sync_knocks_s").get(0).asDouble();
        List<double[]> bends = new ArrayList<>();
        double stance = Double.NaN;
        try (BufferedReader in = OpenData.open(session.folder().resolve("truth.csv.gz"))) {
            in.readLine();
            boolean bent = false;
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",", -1);
                double t = Double.parseDouble(cells[0]);
                if (t > knocks) {
                    break;
                }
                Vector3 up = new Quaternion(
                                Double.parseDouble(cells[5]),
                                Double.parseDouble(cells[6]),
                                Double.parseDouble(cells[7]),
                                Double.parseDouble(cells[8]))
                        .rotateBack(Vector3.UP);
                double tipped = Math.acos(Math.min(1, up.z()));
                stance = Double.isNaN(stance) ? tipped : stance;
                boolean now = tipped - stance > BENT;
                if (now && !bent) {
                    bends.add(new double[] {t, t});
                } else if (now) {
                    bends.get(bends.size() - 1)[1] = t;
                }
                bent = now;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bends;
    }

    /** What a sensor misses, beginning and end of each, s on its clock: about contacts and anywhere. */
    private List<double[]> gaps(DoubleUnaryOperator ownClock) {
        List<double[]> gaps = new ArrayList<>();
        if (trouble == Trouble.GAPS || trouble == Trouble.GAPS_AND_NO_BENDS) {
            JsonNode landings = original.truth().get("landings");
            for (int k = 0; k < GAPS; k++) {
                double contact = landings.get(random.nextInt(landings.size()))
                        .get("t_contact_s")
                        .asDouble();
                double middle = contact + (k % 2 == 0 ? random.nextDouble(-0.3, 0.3) : random.nextDouble(-8, 8));
                double half = random.nextDouble(SHORTEST_GAP_S, LONGEST_GAP_S) / 2;
                gaps.add(new double[] {ownClock.applyAsDouble(middle) - half, ownClock.applyAsDouble(middle) + half});
            }
        }
        return gaps;
    }

    private double slip() {
        JsonNode landings = original.truth().get("landings");
        return landings.get(landings.size() / 2 - 1).get("t_contact_s").asDouble() + SLIP_AFTER_LANDING_S;
    }

    private SensorStream worn(
            SensorStream stream, String place, double startS, double beginS, boolean slips, List<double[]> gaps) {
        JsonNode sensor = original.truth().get("sensors").get(place);
        JsonNode q = sensor.get("mount_quat_sensor_to_segment_wxyz");
        Quaternion put = mounting()
                .conjugate()
                .times(new Quaternion(
                        q.get(0).asDouble(),
                        q.get(1).asDouble(),
                        q.get(2).asDouble(),
                        q.get(3).asDouble()));
        Quaternion moved = turn(random.nextDouble(LEAST_SLIP, LARGEST_SLIP)).times(put);
        Axes oldForce = new Axes(vector(sensor, "accel_bias_g").times(GRAVITY), vector(sensor, "accel_scale"));
        Axes oldTurn = new Axes(vector(sensor, "gyro_bias_dps").times(Math.toRadians(1)), vector(sensor, "gyro_scale"));
        Axes force = new Axes(random, FORCE_BIAS);
        Axes turn = new Axes(random, TURN_BIAS);
        double slip = trouble == Trouble.STRAP_MOVES && slips ? slip() : Double.POSITIVE_INFINITY;
        SensorStream.Builder builder = new SensorStream.Builder();
        List<Integer> clipped = new ArrayList<>();
        for (int i = 0; i < stream.size(); i++) {
            double t = startS + stream.time(i);
            boolean lost = trouble == Trouble.SAMPLES_LOST && random.nextDouble() < LOST;
            if (lost || t < beginS || gaps.stream().anyMatch(gap -> t > gap[0] && t < gap[1])) {
                continue;
            }
            Quaternion now = t < slip ? put : moved;
            Vector3 f = force.read(now.rotate(oldForce.real(new Vector3(stream.ax(i), stream.ay(i), stream.az(i)))));
            Vector3 w = turn.read(now.rotate(oldTurn.real(new Vector3(stream.gx(i), stream.gy(i), stream.gz(i)))));
            if (stream.accelerationClipped(i)) {
                clipped.add(builder.size());
            }
            builder.add(t, f.x(), f.y(), f.z(), w.x(), w.y(), w.z());
        }
        clipped.forEach(builder::clipAcceleration);
        return builder.build();
    }

    /** Some quarter turns, and a little beside them. */
    private Quaternion mounting() {
        Quaternion quarters = Quaternion.IDENTITY;
        for (int k = 0; k < 8; k++) {
            Vector3 axis = List.of(Vector3.X, Vector3.Y, Vector3.UP).get(random.nextInt(3));
            quarters = quarters.times(Quaternion.fromBodyRate(axis.times(Math.PI / 2), 1));
        }
        return quarters.times(turn(random.nextDouble(BESIDE)));
    }

    /** A turn about any axis. */
    private Quaternion turn(double angle) {
        return Quaternion.fromBodyRate(
                Rotations.randomVector(random).normalised().times(angle), 1);
    }

    private static Vector3 vector(JsonNode of, String name) {
        JsonNode v = of.get(name);
        return new Vector3(v.get(0).asDouble(), v.get(1).asDouble(), v.get(2).asDouble());
    }

    /** Bias and scale of three axes. */
    private record Axes(Vector3 bias, Vector3 scale) {

        Axes(SplittableRandom random, double bias) {
            this(even(random, bias), even(random, SCALE).plus(new Vector3(1, 1, 1)));
        }

        Vector3 read(Vector3 real) {
            return new Vector3(
                    real.x() * scale.x() + bias.x(), real.y() * scale.y() + bias.y(), real.z() * scale.z() + bias.z());
        }

        Vector3 real(Vector3 read) {
            return new Vector3(
                    (read.x() - bias.x()) / scale.x(),
                    (read.y() - bias.y()) / scale.y(),
                    (read.z() - bias.z()) / scale.z());
        }

        private static Vector3 even(SplittableRandom random, double most) {
            return new Vector3(
                    random.nextDouble(-most, most), random.nextDouble(-most, most), random.nextDouble(-most, most));
        }
    }
}

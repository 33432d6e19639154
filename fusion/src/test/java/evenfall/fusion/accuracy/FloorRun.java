package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.Segment;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorRecorder;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorRecording;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import tools.jackson.databind.JsonNode;

/** What the {@link KnowingObserver} errs by. */
final class FloorRun {

    /** Before take-off the person stands until about here, s. */
    private static final double BEFORE_TAKEOFF_S = 0.6;

    private static final double RATE_HZ = 200;
    /** Tried on the angles, Hz; 0 for none. */
    private static final double[] SMOOTHINGS = {0, 20, 12, 8};

    private FloorRun() {}

    /**
     * The floor on the simulated sessions, and the program on the same landings: those without a gap, whose end is told, and
     * before a strap moves.
     */
    record Simulated(Floor floor, LandingErrors program) {

        static Simulated of(SimulatedRun run) {
            List<KnownSession> known =
                    run.sessions().parallelStream().map(KnownSession::of).toList();
            Floor floor = Floor.of(hertz -> LandingErrors.together(
                    known.parallelStream().map(k -> simulated(k, hertz)).toList()));
            return new Simulated(
                    floor,
                    LandingErrors.together(known.stream()
                            .map(k -> run.errors(k.session(), k.seen()))
                            .toList()));
        }
    }

    /** A session with all that is known of it, read once. */
    private record KnownSession(
            SimulatedSession session, TrueBody body, KnownSamples pelvis, KnownSamples upperBack, Set<Double> seen) {

        static KnownSession of(SimulatedSession session) {
            SensorRecording upperBack =
                    Objects.requireNonNull(session.recording().upperBack());
            return new KnownSession(
                    session,
                    new SimulatedBody(session.folder()),
                    KnownSamples.of(session, Place.PELVIS, session.recording().pelvis().stream()),
                    KnownSamples.of(session, Place.UPPER_BACK, upperBack.stream()),
                    new TreeSet<>());
        }
    }

    private static LandingErrors simulated(KnownSession known, double smoothing) {
        SimulatedSession session = known.session();
        KnowingObserver observer = new KnowingObserver(known.body(), known.pelvis(), known.upperBack(), smoothing);
        LandingErrors errors = new LandingErrors();
        JsonNode slip = session.truth().get("strap_slip");
        double until =
                slip.isNull() ? Double.POSITIVE_INFINITY : slip.get("t_s").asDouble();
        for (JsonNode t : session.truth().get("landings")) {
            double contact = t.get("t_contact_s").asDouble();
            if (contact < until
                    && t.get("t_settled_s").isNumber()
                    && observer.add(
                            errors,
                            t.get("t_takeoff_s").asDouble() - BEFORE_TAKEOFF_S,
                            contact,
                            t.get("t_lowest_s").asDouble(),
                            t.get("t_settled_s").asDouble())) {
                known.seen().add(contact);
            }
        }
        return errors;
    }

    /** On motions of the synthesiser recorded by spoilt sensors. */
    static Floor synthetic(List<LadderMotion> motions, Rung.Way way) {
        return Floor.of(hertz -> LandingErrors.together(motions.parallelStream()
                .map(motion -> synthetic(motion, way, hertz))
                .toList()));
    }

    private static LandingErrors synthetic(LadderMotion motion, Rung.Way way, double smoothing) {
        SensorModel pelvis = way.spoil(SensorModel.ideal(RATE_HZ), Place.PELVIS, motion);
        SensorModel upperBack = way.spoil(SensorModel.ideal(RATE_HZ), Place.UPPER_BACK, motion);
        KnowingObserver observer = new KnowingObserver(
                new SyntheticBody(motion.motion()),
                KnownSamples.of(
                        SensorRecorder.record(motion.motion(), Segment.PELVIS, pelvis, motion.seed() + 1), pelvis),
                KnownSamples.of(
                        SensorRecorder.record(motion.motion(), Segment.UPPER_BACK, upperBack, motion.seed() + 2),
                        upperBack),
                smoothing);
        LandingErrors errors = new LandingErrors();
        for (LandingTruth t : motion.truth()) {
            if (t.settledS() != null) {
                observer.add(errors, t.takeoffS() - BEFORE_TAKEOFF_S, t.contactS(), t.lowestS(), t.settledS());
            }
        }
        return errors;
    }

    /**
     * A floor of each figure: the least over several low-passes on the angles, chosen with the truth in sight.
     *
     * @param least errors with the low-pass that suits the figure best
     * @param smoothing that low-pass, Hz; 0 for none
     */
    record Floor(Map<Figure, ErrorSummary> least, Map<Figure, Double> smoothing) {

        static Floor of(DoubleFunction<LandingErrors> run) {
            Floor floor = new Floor(new EnumMap<>(Figure.class), new EnumMap<>(Figure.class));
            for (double hertz : SMOOTHINGS) {
                LandingErrors errors = run.apply(hertz);
                for (Figure figure : Figure.values()) {
                    ErrorSummary now = errors.summary(figure);
                    ErrorSummary best = floor.least.get(figure);
                    if (now.count() > 0 && (best == null || now.rms() < best.rms())) {
                        floor.least.put(figure, now);
                        floor.smoothing.put(figure, hertz);
                    }
                }
            }
            return floor;
        }
    }
}

package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.BodyMotion;
import evenfall.fixtures.sensor.AxisErrors;
import evenfall.fixtures.sensor.Dropout;
import evenfall.fixtures.sensor.Mount;
import evenfall.fixtures.sensor.SensorClock;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.Slip;
import evenfall.fixtures.sensor.Strap;
import evenfall.fixtures.sensor.Triple;
import evenfall.fixtures.sensor.Turn;
import evenfall.fixtures.truth.LandingTruth;
import evenfall.ingest.place.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** The faults of sensors, straps and openings, each from none to severe, one changed at a time. */
final class Ladder {

    static final String PERFECT = "perfect";
    static final String EVERYTHING = "everything";

    private static final double G = BodyMotion.GRAVITY;
    private static final double DEGREE = Math.toRadians(1);
    /** Of cheap sensors, as {@link SensorModel#cheap}: per root Hz. */
    private static final double FORCE_NOISE = 200e-6 * G;

    private static final double TURN_NOISE = 0.008 * DEGREE;
    private static final int BITS = 16;
    /** Damping of a strap with skin under it, part of the critical; common practice, no source. */
    private static final double STRAP_DAMPING = 0.25;

    private static final double USUAL_STRAP_HZ = 28;
    private static final double USUAL_HZ = 200;

    private static final double GAP_EVERY_S = 2.7;
    /** Half of a gap about contact lies behind this, s. */
    private static final double GAP_AFTER_CONTACT_S = 0.01;

    private final List<Rung> rungs = new ArrayList<>();

    private Ladder() {}

    /** All rungs in order; the first of each fault but those of openings is {@link #PERFECT}. */
    static List<Rung> rungs() {
        Ladder ladder = new Ladder();
        ladder.rungs.add(Rung.of(PERFECT, "sensors", (perfect, place, motion) -> perfect));
        ladder.instruments();
        ladder.sampling();
        ladder.straps();
        ladder.openings();
        ladder.everything();
        return ladder.rungs;
    }

    private void add(String fault, String unit, DoubleFunction<Rung.Way> ways, double... levels) {
        for (double level : levels) {
            String words = String.format(Locale.ROOT, level == Math.rint(level) ? "%.0f" : "%s", level) + unit;
            rungs.add(Rung.of(fault, words, ways.apply(level)));
        }
    }

    private void instruments() {
        add(
                "gyroscope bias",
                " deg/s",
                b -> gyroscope((e, place) -> e.withBias(skew(place).times(b * DEGREE))),
                0.5,
                2,
                5,
                10);
        add(
                "gyroscope drift",
                " deg/s a minute",
                b -> gyroscope((e, place) -> e.withDrift(skew(place).times(b * DEGREE / 60))),
                0.03,
                0.1,
                0.3,
                1);
        add(
                "accelerometer bias",
                " mg",
                b -> accelerometer((e, place) -> e.withBias(skew(place).times(b * G / 1000))),
                10,
                25,
                50,
                100);
        add(
                "scale of both",
                " %",
                s -> both((e, place) -> e.withScale(skew(place).times(s / 100))),
                0.5,
                1,
                2,
                3);
        add("noise", " of a cheap sensor's", Ladder::noise, 1, 3, 10, 30);
        add("accelerometer range", " g", r -> accelerometer((e, place) -> e.withRange(r * G, BITS)), 16, 8, 4, 3);
        add(
                "gyroscope range",
                " deg/s",
                r -> gyroscope((e, place) -> e.withRange(r * DEGREE, BITS)),
                2000,
                250,
                125,
                60);
    }

    private void sampling() {
        add("sample rate", " Hz", r -> (perfect, place, motion) -> SensorModel.ideal(r), 400, 200, 100, 50);
        add(
                "jitter of time stamps",
                " ms",
                j -> (perfect, place, motion) -> perfect.withClock(new SensorClock(0, 0, j / 1000)),
                0.2,
                1,
                2);
        add(
                "clock drift between sensors",
                " ppm",
                d -> (perfect, place, motion) ->
                        place == Place.PELVIS ? perfect : perfect.withClock(new SensorClock(0.7, d, 0)),
                20,
                80,
                200);
        add("samples lost singly", " %", Ladder::samplesLost, 2, 5, 10);
        add("gaps anywhere", " ms", Ladder::gapsAnywhere, 20, 50, 100, 200);
        add("gap about contact", " ms", Ladder::gapsAboutContact, 20, 50, 100);
    }

    private void straps() {
        add(
                "tilt of the sensor",
                " deg",
                a -> (perfect, place, motion) -> perfect.withMount(Mount.of(Turn.about(skew(place), a * DEGREE))),
                10,
                25);
        List<Rung.Way> turns = new ArrayList<>();
        for (Turn turn : quarterTurns()) {
            turns.add((perfect, place, motion) -> perfect.withMount(Mount.of(turn)));
        }
        rungs.add(new Rung("quarter turns", "all 24", LadderMotion.Opening.FULL, turns, Set.of()));
        add(
                "soft strap",
                " Hz",
                f -> (perfect, place, motion) -> perfect.withStrap(new Strap(f, STRAP_DAMPING)),
                60,
                40,
                30,
                20);
        add(
                "strap moves half way",
                " deg",
                a -> (perfect, place, motion) -> place == Place.PELVIS
                        ? perfect.withMount(Mount.aligned().withSlip(new Slip(halfWay(motion), skew(place), a)))
                        : perfect,
                5,
                12,
                20);
    }

    private void openings() {
        for (LadderMotion.Opening opening : LadderMotion.Opening.values()) {
            if (opening != LadderMotion.Opening.FULL) {
                String words = opening.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                rungs.add(new Rung(
                        "opening routine", words, opening, List.of((perfect, place, motion) -> perfect), Set.of()));
            }
        }
    }

    private void everything() {
        for (double rate : new double[] {400, 200, 100}) {
            rungs.add(Rung.of(
                    EVERYTHING,
                    String.format(Locale.ROOT, "cheap, %.0f Hz, rigid strap", rate),
                    (perfect, place, motion) -> cheap(rate, place, motion)));
            rungs.add(Rung.of(
                    EVERYTHING,
                    String.format(Locale.ROOT, "cheap, %.0f Hz, strap of %.0f Hz", rate, USUAL_STRAP_HZ),
                    (perfect, place, motion) ->
                            cheap(rate, place, motion).withStrap(new Strap(USUAL_STRAP_HZ, STRAP_DAMPING))));
        }
    }

    /** Everything wrong at once, and then one thing after the other made right, by which its share is seen. */
    static List<Rung> shares() {
        Ladder ladder = new Ladder();
        ladder.right("nothing", Set.of(), m -> m);
        ladder.right("rigid strap", Set.of(), m -> m.withStrap(null));
        ladder.right(
                "no noise, no steps",
                Set.of(),
                m -> m.withAccelerometer(exact(m.accelerometer())).withGyroscope(exact(m.gyroscope())));
        ladder.right(
                "no bias, no drift",
                Set.of(),
                m -> m.withAccelerometer(steady(m.accelerometer())).withGyroscope(steady(m.gyroscope())));
        ladder.right(
                "no scale or cross errors",
                Set.of(),
                m -> m.withAccelerometer(
                                m.accelerometer().withScale(Triple.ZERO).withCross(Triple.ZERO))
                        .withGyroscope(m.gyroscope().withScale(Triple.ZERO).withCross(Triple.ZERO)));
        ladder.right("mounting known", Set.of(Rung.Known.MOUNTING), m -> m.withMount(Mount.aligned()));
        ladder.right("clocks known", Set.of(Rung.Known.CLOCK), m -> m);
        ladder.right(
                "all of these",
                Set.of(Rung.Known.MOUNTING, Rung.Known.CLOCK),
                m -> SensorModel.ideal(m.rateHz()).withClock(m.clock()));
        return ladder.rungs;
    }

    private void right(String words, Set<Rung.Known> known, UnaryOperator<SensorModel> change) {
        rungs.add(new Rung(
                "made right:",
                words,
                LadderMotion.Opening.FULL,
                List.of((perfect, place, motion) -> change.apply(
                        cheap(USUAL_HZ, place, motion).withStrap(new Strap(USUAL_STRAP_HZ, STRAP_DAMPING)))),
                known));
    }

    private static AxisErrors exact(AxisErrors e) {
        return e.withNoise(0).withRange(Double.POSITIVE_INFINITY, 0);
    }

    private static AxisErrors steady(AxisErrors e) {
        return e.withBias(Triple.ZERO).withDrift(Triple.ZERO);
    }

    private static SensorModel cheap(double rate, Place place, LadderMotion motion) {
        return SensorModel.cheap(rate, 2 * motion.seed() + number(place));
    }

    private interface Spoilt {
        AxisErrors of(AxisErrors none, Place place);
    }

    private static Rung.Way gyroscope(Spoilt spoilt) {
        return (perfect, place, motion) -> perfect.withGyroscope(spoilt.of(AxisErrors.NONE, place));
    }

    private static Rung.Way accelerometer(Spoilt spoilt) {
        return (perfect, place, motion) -> perfect.withAccelerometer(spoilt.of(AxisErrors.NONE, place));
    }

    private static Rung.Way both(Spoilt spoilt) {
        return (perfect, place, motion) -> perfect.withAccelerometer(spoilt.of(AxisErrors.NONE, place))
                .withGyroscope(spoilt.of(AxisErrors.NONE, place));
    }

    /** The strap of {@link #EVERYTHING} on perfect sensors. */
    static Rung.Way usualStrap() {
        return (perfect, place, motion) -> perfect.withStrap(new Strap(USUAL_STRAP_HZ, STRAP_DAMPING));
    }

    static Rung.Way noise(double times) {
        return (perfect, place, motion) -> perfect.withAccelerometer(AxisErrors.NONE.withNoise(times * FORCE_NOISE))
                .withGyroscope(AxisErrors.NONE.withNoise(times * TURN_NOISE));
    }

    private static Rung.Way samplesLost(double percent) {
        return (perfect, place, motion) -> {
            SplittableRandom random = new SplittableRandom(37 * motion.seed() + number(place));
            SensorModel model = perfect;
            double interval = 1 / perfect.rateHz();
            double end = motion.motion().duration();
            for (double t = 0.5 * interval; t < end; t += interval) {
                model = random.nextDouble(100) < percent ? model.withDropout(new Dropout(t, t + interval)) : model;
            }
            return model;
        };
    }

    private static Rung.Way gapsAnywhere(double ms) {
        return (perfect, place, motion) -> {
            SplittableRandom random = new SplittableRandom(31 * motion.seed() + number(place));
            SensorModel model = perfect;
            double end = motion.motion().duration();
            for (double t = 1; t < end; t += GAP_EVERY_S) {
                double from = t + random.nextDouble(0, GAP_EVERY_S - 0.4);
                model = model.withDropout(new Dropout(from, from + ms / 1000));
            }
            return model;
        };
    }

    private static Rung.Way gapsAboutContact(double ms) {
        return (perfect, place, motion) -> {
            SensorModel model = perfect;
            for (LandingTruth landing : motion.truth()) {
                double middle = landing.contactS() + GAP_AFTER_CONTACT_S;
                model = model.withDropout(new Dropout(middle - ms / 2000, middle + ms / 2000));
            }
            return model;
        };
    }

    /** While the person stands after the landing in the middle. */
    private static double halfWay(LadderMotion motion) {
        LandingTruth middle = motion.truth().get((motion.truth().size() - 1) / 2);
        return middle.contactS() + 3;
    }

    private static int number(Place place) {
        return place == Place.PELVIS ? 0 : 1;
    }

    /** Across all axes, another way at each place. */
    private static Triple skew(Place place) {
        return place == Place.PELVIS ? new Triple(0.6, -0.64, 0.48) : new Triple(-0.48, 0.6, 0.64);
    }

    /** All turns that lay axes onto axes. */
    static List<Turn> quarterTurns() {
        List<Turn> faces = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            faces.add(Turn.ofDegrees(0, 90 * k, 0));
        }
        faces.add(Turn.ofDegrees(0, 0, 90));
        faces.add(Turn.ofDegrees(0, 0, -90));
        List<Turn> all = new ArrayList<>();
        for (Turn face : faces) {
            for (int k = 0; k < 4; k++) {
                all.add(face.times(Turn.ofDegrees(90 * k, 0, 0)));
            }
        }
        return all;
    }
}

package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.Arrays;
import java.util.List;

/**
 * Whether the gyroscope's unit can be right: while the body moves slowly the direction of gravity in the sensor turns
 * as the gyroscope says, du/dt = -omega x u.
 *
 * <p>The slope of the one against the other over steps of {@value #STEP_S} s is 1 when the units are right, 57.3 or
 * its inverse when degrees and radians are mixed up. Only a clear relation is believed.
 */
final class TurnUnitsCheck {

    private static final Words WORDS = Words.beside(TurnUnitsCheck.class);

    private static final double STEP_S = 0.1;

    /** Steps count while the force stays this close to its usual size, so that it is mostly gravity. */
    private static final double MOSTLY_GRAVITY = 0.1;

    private static final double CLEAR = 0.7;
    private static final int FEWEST_STEPS = 20;

    /** Beyond this factor it is a unit, not a fault of scale. */
    private static final double FAR_OFF = 8;

    /**
     * The two sizes lie within 0.4 and 3 of one another in the open recordings of people, pushes included; a mixed-up unit
     * makes 57.
     */
    private static final double FAR_SMALL = 16;

    private static final double FAR_LARGE = 12;

    /** Only a body that moves tells, rad in a step: gravity by so much, or turn rates of a body thrown about. */
    private static final double MOVES = 0.015;

    private static final double WILD = 0.5;

    private TurnUnitsCheck() {}

    static List<Finding> check(SensorStream stream) {
        int length = (int) Math.round(STEP_S * stream.rateHz());
        int steps = length < 2 ? 0 : stream.size() / length;
        if (steps < FEWEST_STEPS) {
            return List.of();
        }
        Relation relation = relation(stream, length, steps);
        double slope = relation.slope();
        if (relation.count < FEWEST_STEPS) {
            return List.of();
        }
        boolean clear = relation.clearness() >= CLEAR && (Math.abs(slope) >= FAR_OFF || Math.abs(slope) <= 1 / FAR_OFF);
        if (!clear) {
            return bySize(relation);
        }
        boolean small = Math.abs(slope) > 1;
        double factor = small ? Math.abs(slope) : 1 / Math.abs(slope);
        boolean degrees = factor > 40 && factor < 80;
        return List.of(new Finding(
                FindingCode.UNITS,
                Severity.ERROR,
                WORDS.say(
                        "turn.factor",
                        Digits.fixed(factor, 0),
                        WORDS.say(small ? "turn.little" : "turn.much"),
                        Wording.moment(relation.firstS),
                        degrees
                                ? WORDS.say(
                                        "turn.factor.unit",
                                        WORDS.say(small ? "turn.rad" : "turn.deg"),
                                        small ? "rad/s" : "deg/s")
                                : WORDS.say("turn.factor.scale")),
                null,
                relation.firstS));
    }

    /** Where pushes blur the relation, as in walking, a unit still shows by the sizes of the two alone. */
    private static List<Finding> bySize(Relation relation) {
        double turned = Math.sqrt(relation.seen / relation.count);
        double told = Math.sqrt(relation.said / relation.count);
        boolean small = told > 0 && turned > MOVES && turned > FAR_SMALL * told;
        boolean large = told > WILD && told > FAR_LARGE * turned;
        if (!small && !large) {
            return List.of();
        }
        return List.of(new Finding(
                FindingCode.UNITS,
                Severity.ERROR,
                WORDS.say(
                        "turn.far",
                        WORDS.say(small ? "turn.little" : "turn.much"),
                        Wording.moment(relation.firstS),
                        WORDS.say(small ? "turn.is.rad" : "turn.is.deg")),
                null,
                relation.firstS));
    }

    private static Relation relation(SensorStream stream, int length, int steps) {
        double usual = usualForce(stream, length, steps);
        double[][] mean = new double[3][6];
        float[] scratch = new float[length];
        Relation relation = new Relation();
        int good = 0;
        for (int step = 0; step < steps; step++) {
            double[] now = mean[step % 3];
            double force = Means.of(stream, step * length, scratch, now);
            double spent = stream.time(step * length + length - 1) - stream.time(step * length);
            good = Math.abs(force / usual - 1) < MOSTLY_GRAVITY && spent < 1.5 * STEP_S ? good + 1 : 0;
            if (good >= 3) {
                relation.add(
                        mean[(step + 1) % 3],
                        mean[(step + 2) % 3],
                        now,
                        length / stream.rateHz(),
                        stream.time((step - 1) * length));
            }
        }
        return relation;
    }

    private static double usualForce(SensorStream stream, int length, int steps) {
        int stride = Math.max(1, steps / 2048);
        double[] mean = new double[6];
        float[] scratch = new float[length];
        double[] forces = new double[(steps + stride - 1) / stride];
        for (int k = 0; k < forces.length; k++) {
            forces[k] = Means.of(stream, k * stride * length, scratch, mean);
        }
        Arrays.sort(forces);
        return forces[forces.length / 2];
    }

    private static final class Relation {

        private double both;
        private double seen;
        private double said;
        private int count;
        private double firstS;

        void add(double[] before, double[] at, double[] after, double stepS, double timeS) {
            firstS = count++ == 0 ? timeS : firstS;
            for (int c = 0; c < 3; c++) {
                int d = (c + 1) % 3;
                int e = (c + 2) % 3;
                double turned = (after[c] - before[c]) / 2;
                double told = -(at[3 + d] * at[e] - at[3 + e] * at[d]) * stepS;
                both += turned * told;
                seen += turned * turned;
                said += told * told;
            }
        }

        double slope() {
            return said > 0 ? both / said : 0;
        }

        double clearness() {
            return seen > 0 && said > 0 ? Math.abs(both) / Math.sqrt(seen * said) : 0;
        }
    }
}

package evenfall.report.block;

import evenfall.ingest.words.Words;
import evenfall.report.statistics.StudentT;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * How much more a difference that somebody states would need to be found four times in five and called by chance one time in
 * twenty; for scientists alone, since nobody should land more in order to know more.
 *
 * @param measure its name
 * @param difference the difference, in the measure's unit
 * @param feet between left and right: landings on each foot, were days all the same
 * @param sessions between left and right: sessions with as many landings on each foot as so far
 * @param stretch between two stretches of training: sessions in each until their means tell so much (the smallest change that is
 *     more than the typical error explains, less by the root of the sessions), or null where that is not known
 * @param why why something is null, or null
 */
public record Needed(
        String measure,
        double difference,
        @Nullable Count feet,
        @Nullable Count sessions,
        @Nullable Integer stretch,
        @Nullable String why) {

    private static final Words WORDS = Words.beside(Needed.class);

    private static final int MOST = 1_000_000;
    private static final int LEAST_SESSIONS = 3;

    /** Found four times in five: common practice. */
    private static final double FOUND = 0.8;

    /**
     * How many.
     *
     * @param have there are
     * @param need it needs
     */
    public record Count(int have, int need) {

        /** How many more. */
        public int more() {
            return Math.max(0, need - have);
        }
    }

    /**
     * For a difference between the feet, or between two stretches of training.
     *
     * @param difference larger than 0
     */
    public static Needed of(Block block, String measure, double difference) {
        MeasureCourse course = block.measures().get(measure);
        if (course == null) {
            return new Needed(measure, difference, null, null, null, WORDS.say("needed.unmeasured"));
        }
        Evidence.Feet feet = course.evidence().feet();
        Double mdc95 = course.mdc95();
        return new Needed(
                measure,
                difference,
                feet == null ? null : feet(course.sides(), feet, difference),
                feet == null ? null : sessions(feet, difference),
                mdc95 == null ? null : whole(mdc95 / difference * mdc95 / difference, 1),
                feet == null ? course.sides().why() : mdc95 == null ? WORDS.say("needed.error") : null);
    }

    private static Count feet(Sides sides, Evidence.Feet feet, double difference) {
        int have = Math.min(sides.left().n(), sides.right().n());
        return new Count(have, SidesAnalysis.landings(feet.scatter(), difference));
    }

    private static Count sessions(Evidence.Feet feet, double difference) {
        double[] differences = feet.differences();
        double spread = new StandardDeviation().evaluate(differences);
        int need = LEAST_SESSIONS;
        while (need < MOST && need < enough(need, spread / difference)) {
            need++;
        }
        return new Count(differences.length, need);
    }

    /** How many it would need by the t distribution of so many. */
    private static double enough(int sessions, double ratio) {
        double reach = StudentT.quantile(sessions - 1, 0.975) + StudentT.quantile(sessions - 1, FOUND);
        return reach * ratio * reach * ratio;
    }

    private static int whole(double count, int least) {
        return (int) Math.max(least, Math.min(MOST, Math.ceil(count)));
    }
}

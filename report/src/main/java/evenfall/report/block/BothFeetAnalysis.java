package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.measure.Turning;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Medians;
import evenfall.report.statistics.StudentT;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/** To which side two-footed landings go: their median, with Student's interval from the scatter of session medians. */
final class BothFeetAnalysis {

    private static final Words WORDS = Words.beside(BothFeetAnalysis.class);

    private static final int SESSIONS_FOR_BIAS = 3;

    private final BothFeet bothFeet;
    private final double p;

    /**
     * Looks at the two-footed landings among {@code measured}.
     *
     * @param turning which side the measure's sign means; not {@link Turning#NONE}
     */
    BothFeetAnalysis(
            List<BlockLanding> measured,
            Turning turning,
            ToDoubleFunction<BlockLanding> value,
            @Nullable Double mdc95) {
        List<BlockLanding> both =
                measured.stream().filter(landing -> landing.side() == Side.BOTH).toList();
        double[] values = both.stream().mapToDouble(value).toArray();
        BySession by = new BySession(both);
        if (by.sessions() < SESSIONS_FOR_BIAS) {
            this.bothFeet = new BothFeet(
                    values.length,
                    values.length == 0 ? null : Double.valueOf(Medians.of(values)),
                    null,
                    Trend.TOO_FEW,
                    WORDS.say("feet.few"));
            this.p = 1;
            return;
        }
        double median = Medians.of(values);
        double[] medians = by.medians(values);
        double error = new StandardDeviation().evaluate(medians) * Math.sqrt(shares(by.counts(), values.length));
        StudentT said = new StudentT(median, error, by.sessions() - 1);
        Interval interval = said.interval();
        this.p = said.chance();
        boolean clear = mdc95 != null && interval.clearOfZero() && Math.abs(median) > mdc95;
        boolean left = (median > 0) == (turning == Turning.LEFT_POSITIVE);
        this.bothFeet = new BothFeet(
                values.length, median, interval, !clear ? BothFeet.EVEN : left ? "to the left" : "to the right", null);
    }

    BothFeet bothFeet() {
        return bothFeet;
    }

    /** How often chance alone would give a bias as large. */
    double p() {
        return p;
    }

    /** What the median of all landings makes of the scatter between sessions: each session weighs by its landings. */
    private static double shares(int[] counts, int all) {
        double sum = 0;
        for (int count : counts) {
            sum += (double) count * count / ((double) all * all);
        }
        return sum;
    }
}

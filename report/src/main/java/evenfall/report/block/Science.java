package evenfall.report.block;

import evenfall.report.statistics.BootstrapMean;
import evenfall.report.statistics.BrokenStick;
import evenfall.report.statistics.FewDifferences;
import evenfall.report.statistics.Kendall;
import evenfall.report.statistics.Symmetry;
import java.time.LocalDate;
import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * What only a scientist asks of a measure: second opinions on what is called elsewhere, by other methods. Nothing here is called
 * a change, and no page for a coach shows it.
 *
 * @param typicalErrorPercent typical error as a share, from logarithms; null where a share means nothing or is not known
 * @param kendall the trend by the order of the medians alone, or null with fewer than four sessions
 * @param bend a line that bends once, or null where there are too few sessions for one
 * @param bendDay the day it bends, or null with {@code bend}
 * @param feet left against right without a normal distribution, or null where sides are not compared
 */
public record Science(
        @Nullable Double typicalErrorPercent,
        @Nullable Kendall kendall,
        @Nullable BrokenStick bend,
        @Nullable LocalDate bendDay,
        @Nullable Feet feet) {

    private static final int SESSIONS_FOR_TREND = 4;
    private static final int SESSIONS_FOR_ERROR = 3;
    private static final double DAYS_A_WEEK = 7;

    /**
     * Left against right.
     *
     * @param sessions that have both feet
     * @param signFlipChance of all ways to turn the signs of their differences, the share with as large a mean
     * @param middle of the averages of any two of the differences (Hodges and Lehmann)
     * @param bootstrap of the mean of the differences, or null where they do not scatter
     * @param symmetryAnglePercent null where a share means nothing
     */
    public record Feet(
            int sessions,
            double signFlipChance,
            double middle,
            @Nullable BootstrapMean bootstrap,
            @Nullable Double symmetryAnglePercent) {}

    /** Of a measure. */
    public static Science of(MeasureCourse course) {
        Evidence evidence = course.evidence();
        double[] medians = evidence.values();
        double[] weeks = evidence.weeks();
        boolean several = medians.length >= SESSIONS_FOR_TREND && weeks[weeks.length - 1] > 0;
        BrokenStick bend = several ? BrokenStick.of(weeks, medians) : null;
        LocalDate day =
                bend == null ? null : evidence.dates().get(0).day().plusDays(Math.round(bend.at() * DAYS_A_WEEK));
        return new Science(
                evidence.positive() ? errorPercent(medians) : null,
                several ? Kendall.of(weeks, medians) : null,
                bend,
                day,
                feet(evidence));
    }

    /** 100 (exp(s / √2) - 1), s the standard deviation of the differences of successive logarithms (Hopkins 2000). */
    private static @Nullable Double errorPercent(double[] medians) {
        if (medians.length < SESSIONS_FOR_ERROR || Arrays.stream(medians).anyMatch(median -> !(median > 0))) {
            return null;
        }
        double[] differences = new double[medians.length - 1];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = Math.log(medians[i + 1] / medians[i]);
        }
        return 100 * Math.expm1(new StandardDeviation().evaluate(differences) / Math.sqrt(2));
    }

    private static @Nullable Feet feet(Evidence evidence) {
        Evidence.Feet feet = evidence.feet();
        if (feet == null) {
            return null;
        }
        double[] differences = feet.differences();
        Double chance = FewDifferences.signFlipChance(differences);
        double half = Arrays.stream(differences).average().orElse(0) / 2;
        boolean share = evidence.positive() && feet.middle() > Math.abs(half);
        return new Feet(
                differences.length,
                chance == null ? 1 : chance,
                FewDifferences.hodgesLehmann(differences),
                BootstrapMean.of(differences),
                share ? Symmetry.angle(feet.middle() + half, feet.middle() - half) : null);
    }
}

package evenfall.report.statistics;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * What an estimate with a standard error says (Student 1908, Biometrika 6:1).
 *
 * @param estimate the estimate
 * @param error its standard error, at least 0
 * @param freedom degrees of freedom of that error, at least 1
 */
public record StudentT(double estimate, double error, int freedom) {

    private static final double TAIL = 0.025;

    /** So many standard errors to either side hold the truth with 95 %. */
    public static double reach(int freedom) {
        return quantile(freedom, 1 - TAIL);
    }

    /** The value that the standardised estimate stays below with this chance. */
    public static double quantile(int freedom, double chance) {
        return distribution(freedom).inverseCumulativeProbability(chance);
    }

    /** The 95 % interval. */
    public Interval interval() {
        return Interval.about(estimate, reach(freedom) * error);
    }

    /** How often chance alone would give as large an estimate, 0 to 1. */
    public double chance() {
        if (!(error > 0)) {
            return estimate == 0 ? 1 : 0;
        }
        return 2 * distribution(freedom).cumulativeProbability(-Math.abs(estimate) / error);
    }

    /** Null: no random draws are ever asked of it. */
    private static TDistribution distribution(int freedom) {
        return new TDistribution(null, freedom);
    }
}

package evenfall.report.block;

import evenfall.report.statistics.Agreement;
import evenfall.report.statistics.IntraclassCorrelation;
import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * How much more alike landings of one day are than those of different days, at equal height and foot where heights are noted;
 * for scientists.
 *
 * @param alike correlation of landings of one day
 * @param landingsADay how many a day has on average
 * @param error standard error of measurement of a single landing: what single landings of a day scatter about its level
 * @param mdc95 smallest difference of two single landings of a day that is more than their scatter explains, 95 %
 * @param repeatability what two landings of a day, one after the other, differ by at most, 95 times in 100; null without a pair
 */
public record WithinDay(
        IntraclassCorrelation alike,
        double landingsADay,
        double error,
        double mdc95,
        @Nullable Double repeatability) {

    /** Of the values of each session in their order; null where they tell nothing. */
    static @Nullable WithinDay of(double[][] sessions) {
        IntraclassCorrelation alike = IntraclassCorrelation.ofGroups(sessions);
        if (alike == null) {
            return null;
        }
        int all = Arrays.stream(sessions).mapToInt(session -> session.length).sum();
        double error = alike.errorOfOne();
        double[] first = pairs(sessions, 0);
        return new WithinDay(
                alike,
                (double) all / sessions.length,
                error,
                TrendAnalysis.MDC_FACTOR * error,
                first.length == 0 ? null : Double.valueOf(Agreement.repeatability(first, pairs(sessions, 1))));
    }

    /** Of the pairs first and second, third and fourth … of each session, one half. */
    private static double[] pairs(double[][] sessions, int half) {
        DoubleStream.Builder values = DoubleStream.builder();
        for (double[] session : sessions) {
            for (int i = 0; i + 1 < session.length; i += 2) {
                values.add(session[i + half]);
            }
        }
        return values.build().toArray();
    }
}

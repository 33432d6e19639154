package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Reliability and agreement against the printed answers of the papers they come from. */
class ReliabilityTest {

    /** Six targets by four judges: Shrout and Fleiss 1979 (Psychological Bulletin 86:420), table 2. */
    private static final double[][] JUDGED = {
        {9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}
    };

    /** First and second readings of peak flow, l/min: Bland and Altman 1986 (Lancet i:307); the readings from memory. */
    private static final double[] LARGE = {
        494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427
    };

    private static final double[] LARGE_AGAIN = {
        490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421
    };
    private static final double[] MINI = {
        512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451
    };
    private static final double[] MINI_AGAIN = {
        525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443
    };

    /** Published .17, .29, .71 for one judge and .44, .62, .91 for the mean of four; more places by a general-purpose program. */
    @Test
    void sixTargetsByFourJudges_giveThePublishedCorrelations() {
        check(IntraclassCorrelation.ofGroups(JUDGED), 0.1657, -0.1329, 0.7226, 0.4428);
        check(IntraclassCorrelation.agreement(JUDGED), 0.2898, 0.0188, 0.7611, 0.6201);
        check(IntraclassCorrelation.consistency(JUDGED), 0.7148, 0.3425, 0.9459, 0.9093);
    }

    private static void check(
            @Nullable IntraclassCorrelation found, double value, double low, double high, double ofFour) {
        IntraclassCorrelation correlation = Objects.requireNonNull(found);
        assertThat(correlation.value()).isCloseTo(value, within(5e-5));
        assertThat(correlation.interval().low()).isCloseTo(low, within(5e-5));
        assertThat(correlation.interval().high()).isCloseTo(high, within(5e-5));
        assertThat(correlation.ofMean(4)).isCloseTo(ofFour, within(5e-5));
    }

    /** Two days of eight: 0.941808 and 0.937015, by a general-purpose program. */
    @Test
    void twoDaysOfEight_giveTheReferenceCorrelations() {
        double[][] days = {
            {5.1, 5.4}, {6.3, 6.0}, {4.8, 4.9}, {7.2, 7.6}, {5.9, 5.5}, {6.6, 6.9}, {5.4, 5.6}, {6.1, 6.0}
        };
        assertThat(Objects.requireNonNull(IntraclassCorrelation.agreement(days)).value())
                .isCloseTo(0.941808, within(1e-6));
        assertThat(Objects.requireNonNull(IntraclassCorrelation.consistency(days))
                        .value())
                .isCloseTo(0.937015, within(1e-6));
    }

    /** Groups of unlike sizes: F is that of a general-purpose library, and the interval ends where F would be just called. */
    @Test
    void groups_areJudgedByTheLibrarysF() {
        SplittableRandom random = new SplittableRandom(5);
        for (int k = 0; k < 200; k++) {
            double[][] groups = new double[5][];
            for (int g = 0; g < groups.length; g++) {
                double level = random.nextDouble();
                groups[g] = random.doubles(2 + random.nextInt(6))
                        .map(v -> level + v)
                        .toArray();
            }
            double f = new OneWayAnova().anovaFValue(List.of(groups));
            IntraclassCorrelation found = Objects.requireNonNull(IntraclassCorrelation.ofGroups(groups));

            assertThat(found.value() > 0).isEqualTo(f > 1);
            assertThat(found.interval().low() > 0).isEqualTo(new OneWayAnova().anovaPValue(List.of(groups)) < 0.025);
        }
    }

    @Test
    void valuesThatSayNothing_haveNoCorrelation() {
        assertThat(IntraclassCorrelation.ofGroups(new double[][] {{1, 2}})).isNull();
        assertThat(IntraclassCorrelation.ofGroups(new double[][] {{1}, {2}})).isNull();
        assertThat(IntraclassCorrelation.ofGroups(new double[][] {{1, 1}, {1, 1}}))
                .isNull();
        assertThat(IntraclassCorrelation.agreement(new double[][] {{1, 1}, {1, 1}}))
                .isNull();
        assertThat(IntraclassCorrelation.consistency(new double[][] {{1, 1}, {1, 1}}))
                .isNull();
    }

    /** Published: mean -2.1, standard deviation 38.8, r 0.94; limits at 1.96 and their error by a general-purpose program. */
    @Test
    void twoMeters_agreeAsPublished() {
        Agreement agreement = Agreement.of(LARGE, MINI);

        assertThat(agreement.n()).isEqualTo(17);
        assertThat(agreement.mean()).isCloseTo(-2.1176, within(5e-5));
        assertThat(agreement.spread()).isCloseTo(38.7651, within(5e-5));
        assertThat(agreement.limits().low()).isCloseTo(-78.097, within(5e-4));
        assertThat(agreement.limits().high()).isCloseTo(73.862, within(5e-4));
        assertThat(agreement.limitError()).isCloseTo(16.2846, within(5e-5));
        assertThat(agreement.correlation()).isCloseTo(0.9433, within(5e-5));
        assertThat(Agreement.repeatability(LARGE, LARGE_AGAIN)).isCloseTo(43.294, within(5e-4));
        assertThat(Agreement.repeatability(MINI, MINI_AGAIN)).isCloseTo(56.316, within(5e-4));
    }
}

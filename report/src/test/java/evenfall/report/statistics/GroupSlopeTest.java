package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class GroupSlopeTest {

    private static final int SESSIONS = 5;
    private static final int A_GROUP = 8;
    private static final int N = SESSIONS * 2 * A_GROUP;

    private final int[] group = new int[N];
    private final int[] session = new int[N];
    private final double[][] columns = new double[2][N];
    private final double[] value = new double[N];

    /** Two groups a session, each with a level of its own; a second column goes with the first. */
    private void draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < N; i++) {
            group[i] = i / A_GROUP;
            session[i] = group[i] / 2;
            columns[0][i] = i % A_GROUP + 5 * (group[i] % 2);
            columns[1][i] = random.nextDouble() < 0.1 * columns[0][i] ? 1 : 0;
            // No value lies far from the others: nothing is brought nearer.
            value[i] = 3 * group[i] + 0.7 * columns[0][i] + 2 * columns[1][i] + random.nextDouble();
        }
    }

    /** A general-purpose library with a column of ones for each group, and once more without each session. */
    @Test
    void slopeAndError_areThoseOfTheLibrary() {
        for (int seed = 0; seed < 50; seed++) {
            draw(seed);
            StudentT said = Objects.requireNonNull(GroupSlope.of(group, session, SESSIONS, columns, value, SESSIONS));
            double[] without = new double[SESSIONS];
            for (int s = 0; s < SESSIONS; s++) {
                without[s] = byLibrary(s);
            }

            assertThat(said.estimate()).as("seed " + seed).isCloseTo(byLibrary(-1), within(1e-7));
            assertThat(said.error()).as("seed " + seed).isCloseTo(Jackknife.error(without), within(1e-7));
            assertThat(said.freedom()).isEqualTo(SESSIONS - 1);
        }
    }

    private double byLibrary(int leftOut) {
        int[] used = IntStream.range(0, N).filter(i -> session[i] != leftOut).toArray();
        double[][] x = new double[used.length][2 * SESSIONS + 2 - (leftOut < 0 ? 0 : 2)];
        double[] y = new double[used.length];
        for (int k = 0; k < used.length; k++) {
            int i = used[k];
            y[k] = value[i];
            x[k][0] = columns[0][i];
            x[k][1] = columns[1][i];
            x[k][2 + (leftOut >= 0 && session[i] > leftOut ? group[i] - 2 : group[i])] = 1;
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(y, x);
        return regression.estimateRegressionParameters()[0];
    }

    /** One landing of a hundred times the scatter moves the slope by less than a tenth of itself. */
    @Test
    void aWildValue_doesNotDecide() {
        draw(3);
        double plain = Objects.requireNonNull(GroupSlope.of(group, session, SESSIONS, columns, value, SESSIONS))
                .estimate();
        value[7] += 100;

        assertThat(Objects.requireNonNull(GroupSlope.of(group, session, SESSIONS, columns, value, SESSIONS))
                        .estimate())
                .isCloseTo(plain, within(0.07));
    }

    @Test
    void aQuantityThatAnotherColumnRepeats_orThatVariesInTooFewSessions_isNotTold() {
        draw(4);
        double[][] repeated = {columns[0], columns[0]};
        double[] once = columns[0].clone();
        Arrays.fill(once, 2 * A_GROUP, N, 1);

        assertThat(GroupSlope.of(group, session, SESSIONS, repeated, value, 1)).isNull();
        assertThat(GroupSlope.of(group, session, SESSIONS, new double[][] {once, columns[1]}, value, 2))
                .isNull();
        assertThat(GroupSlope.of(group, session, SESSIONS, new double[][] {columns[0], new double[N]}, value, 5))
                .isNotNull();
    }
}

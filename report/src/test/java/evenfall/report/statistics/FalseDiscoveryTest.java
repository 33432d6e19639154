package evenfall.report.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class FalseDiscoveryTest {

    /** The fifteen values of Benjamini and Hochberg 1995 (JRSS B 57:289): four are rejected at 0.05. */
    @Test
    void theFifteenValuesOfThePaper() {
        double[] p = {
            .0001, .0004, .0019, .0095, .0201, .0278, .0298, .0344, .0459, .3240, .4262, .5719, .6528, .7590, 1.0
        };
        double[] expected = {
            .0015, .003, .0095, .035625, .0603, .063857, .063857, .0645, .0765, .486, .581182, .714875, .753231,
            .813214, 1
        };

        assertThat(FalseDiscovery.adjusted(p)).containsExactly(expected, within(1e-6));
        assertThat(Arrays.stream(FalseDiscovery.adjusted(p))
                        .filter(q -> q <= 0.05)
                        .count())
                .isEqualTo(4);
    }

    @Test
    void theOrderOfTheValues_doesNotMatter() {
        assertThat(FalseDiscovery.adjusted(new double[] {0.04, 0.01, 0.03}))
                .containsExactly(new double[] {0.04, 0.03, 0.04}, within(1e-12));
        assertThat(FalseDiscovery.adjusted(new double[0])).isEmpty();
    }
}

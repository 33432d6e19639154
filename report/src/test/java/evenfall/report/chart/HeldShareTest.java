package evenfall.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.chart.HeldShare.Judged;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeldShareTest {

    @Test
    void nobody_hasNoShare() {
        assertThat(HeldShare.of(List.of())).isEmpty();
    }

    @Test
    void oneHeightNotedTwice_isOneHeight() {
        List<HeldShare> shares = HeldShare.of(List.of(
                new Judged(0.9, false), new Judged(0.45, true), new Judged(0.45, false), new Judged(0.3, true)));

        assertThat(shares)
                .containsExactly(new HeldShare(0.3, 1, 1), new HeldShare(0.45, 1, 2), new HeldShare(0.9, 0, 1));
    }

    @Test
    void marksThatWouldHideOneAnother_standInRows() {
        assertThat(Swarm.rows(new double[] {10, 12, 40, 11, 26}, 15)).containsExactly(0, 1, 0, 2, 2);
        assertThat(Swarm.count(Swarm.rows(new double[0], 15))).isZero();
    }
}

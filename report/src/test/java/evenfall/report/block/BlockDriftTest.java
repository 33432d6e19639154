package evenfall.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks with known truth: what drifts within sessions, and how form height moves over the weeks. */
class BlockDriftTest {

    private static final int BLOCKS = 100;

    /** 5 in 100 and two standard deviations of drawing as few blocks. */
    private static final double MOST_CALLED = 0.05 + 2 * Math.sqrt(0.05 * 0.95 / BLOCKS);

    private static final double LEAST_HELD = 0.93 - 2 * Math.sqrt(0.93 * 0.07 / BLOCKS);

    @ParameterizedTest
    @ValueSource(strings = {"ladder", "curved ladder", "otherwise each day"})
    void nobodyTires_isRarelyCalledTiring(String kind) {
        int called = 0;
        int held = 0;
        for (int k = 0; k < BLOCKS; k++) {
            Tiring tiring = tiring(k, block -> {
                block.ladder = kind.endsWith("ladder");
                block.tiringScatter = kind.startsWith("otherwise") ? 0.15 : 0;
                if (kind.startsWith("curved")) {
                    // A threshold, as when form gives way from one height on: no straight line or curve of height holds
                    // it.
                    block.height = h -> h > 0.7 ? 12 : 2;
                }
            });
            var interval = Objects.requireNonNull(tiring.interval());
            called += Trend.NO_CLEAR_CHANGE.equals(tiring.verdict()) ? 0 : 1;
            held += interval.low() <= 0 && interval.high() >= 0 ? 1 : 0;
        }
        assertThat((double) called / BLOCKS).isLessThan(MOST_CALLED);
        assertThat((double) held / BLOCKS).isGreaterThan(LEAST_HELD);
    }

    /** Twice the smallest change over a session: days scatter by about 1.25 here, so mdc95 is about 3.5. */
    @Test
    void twiceTheSmallestChangeOverASession_isFound() {
        int found = 0;
        for (int k = 0; k < BLOCKS; k++) {
            found += Trend.RISING.equals(
                            tiring(k, block -> block.perLanding = 7.0 / 17).verdict())
                    ? 1
                    : 0;
        }
        assertThat((double) found / BLOCKS).isGreaterThan(0.95 - 2 * Math.sqrt(0.95 * 0.05 / BLOCKS));
    }

    @Test
    void withoutHeights_tiringIsNotTold() {
        Tiring tiring = tiring(1, block -> block.noted = false);

        assertThat(tiring.interval()).isNull();
        assertThat(tiring.why()).contains("could pass for tiring");
    }

    @Test
    void formHeightThatRises_isFollowed_thoughBoxesRiseToo() {
        int held = 0;
        for (int k = 0; k < BLOCKS; k++) {
            SimulatedBlock block = new SimulatedBlock(k);
            block.sessions = 12;
            block.boxesRise = true;
            block.formScatterM = 0.04;
            block.formPerWeekM = 0.03;
            var interval = Objects.requireNonNull(block.make().formHeightTrend().interval());
            held += interval.low() <= 0.03 && interval.high() >= 0.03 ? 1 : 0;
        }
        assertThat((double) held / BLOCKS).isGreaterThan(LEAST_HELD);
    }

    private static Tiring tiring(long seed, Consumer<SimulatedBlock> as) {
        SimulatedBlock block = new SimulatedBlock(seed);
        as.accept(block);
        return block.course().tiring();
    }
}

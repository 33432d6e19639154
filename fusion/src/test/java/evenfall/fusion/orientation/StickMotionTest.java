package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * The filters on {@link StickMotion}, against the exact truth of the synthesis. Of the seeds that were not used to choose
 * constants; bounds are what was measured and a little more.
 */
class StickMotionTest {

    private static final int[] SEEDS = {1, 3, 5};

    @Test
    void inclinationHoldsWhileAStickIsShaken() {
        assertMeans(false, 0.44, 0.15);
    }

    @Test
    void turnsBeyondFullScaleAreMadeUp() {
        assertMeans(true, 6.1, 2.6);
    }

    private static void assertMeans(boolean clips, double mostLive, double mostTwoPass) {
        double live = 0;
        double twoPass = 0;
        for (int seed : SEEDS) {
            StickMotion stick = StickMotion.ofSeed(seed);
            live += stick.error(clips, FilterKind.LIVE) / SEEDS.length;
            twoPass += stick.error(clips, FilterKind.TWO_PASS) / SEEDS.length;
        }
        assertThat(live).isLessThan(mostLive);
        assertThat(twoPass).isLessThan(mostTwoPass);
    }
}

package evenfall.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.statistics.descriptive.Median;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Blocks with known truth, many of each kind: how often a change is called where there is none, found where there is one,
 * and how often intervals hold the truth. Bounds leave the drawing of so few blocks two of its standard deviations.
 */
class BlockTruthTest {

    private static final int BLOCKS = 400;

    /** 5 in 100 and two standard deviations of drawing 400. */
    private static final double MOST_CALLED = 0.05 + 2 * Math.sqrt(0.05 * 0.95 / BLOCKS);

    private static final double LEAST_HELD = 0.93 - 2 * Math.sqrt(0.93 * 0.07 / BLOCKS);
    private static final double MOST_HELD = 0.97 + 2 * Math.sqrt(0.97 * 0.03 / BLOCKS);

    private static SimulatedBlock simulated(String kind, long seed) {
        SimulatedBlock block = new SimulatedBlock(seed);
        switch (kind) {
            case "equal" -> {}
            case "no height" -> {
                block.noted = false;
                block.height = h -> 0;
            }
            case "four sessions" -> block.sessions = 4;
            case "five sessions" -> block.sessions = 5;
            case "twelve sessions" -> block.sessions = 12;
            case "days scatter" -> block.dayScatter = 4;
            case "boxes rise" -> block.boxesRise = true;
            case "boxes rise and curve" -> {
                block.boxesRise = true;
                block.height = h -> 12 * Math.pow(h, 1.5);
            }
            case "left boxes higher" -> block.leftBoxesHigher = true;
            case "height acts by day" -> {
                block.boxesRise = true;
                block.leftBoxesHigher = true;
                block.heightScatter = 3;
            }
            case "sides scatter" -> block.sideScatter = 1.5;
            case "wild landings" -> block.wild = 0.05;
            case "few landings" -> block.perSession = 10;
            default -> throw new IllegalArgumentException(kind);
        }
        return block;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "equal",
                "no height",
                "four sessions",
                "five sessions",
                "twelve sessions",
                "days scatter",
                "boxes rise",
                "boxes rise and curve",
                "left boxes higher",
                "height acts by day",
                "sides scatter",
                "wild landings",
                "few landings"
            })
    void nothingChanged_isRarelyCalledAChange_andIntervalsHoldTheTruth(String kind) {
        SimulatedBlock simulated = simulated(kind, kind.hashCode());
        int trends = 0;
        int trendHeld = 0;
        int sides = 0;
        int sideHeld = 0;
        int tiring = 0;
        int tiringHeld = 0;
        int tiringTold = 0;
        for (int k = 0; k < BLOCKS; k++) {
            MeasureCourse course = simulated.course();
            Trend trend = course.trend();
            trends += "no clear change".equals(trend.verdict()) ? 0 : 1;
            trendHeld += holds(Objects.requireNonNull(trend.low()), Objects.requireNonNull(trend.high()), 0) ? 1 : 0;
            sides += Sides.NO_CLEAR_DIFFERENCE.equals(course.sides().verdict()) ? 0 : 1;
            var interval = Objects.requireNonNull(course.sides().interval());
            sideHeld += holds(interval.low(), interval.high(), 0) ? 1 : 0;
            var drift = course.tiring().interval();
            if (drift != null) {
                tiringTold++;
                tiringHeld += holds(drift.low(), drift.high(), 0) ? 1 : 0;
                tiring += Trend.NO_CLEAR_CHANGE.equals(course.tiring().verdict()) ? 0 : 1;
            }
        }
        System.getLogger(BlockTruthTest.class.getName())
                .log(
                        System.Logger.Level.DEBUG,
                        kind + ": trends called " + trends + ", held " + trendHeld + "; sides called " + sides
                                + ", held " + sideHeld + "; tiring called " + tiring + ", held " + tiringHeld + " of "
                                + BLOCKS);
        assertThat((double) trends / BLOCKS).as("trends called").isLessThan(MOST_CALLED);
        assertThat((double) sides / BLOCKS).as("sides called").isLessThan(MOST_CALLED);
        assertThat((double) trendHeld / BLOCKS).as("trend held").isBetween(LEAST_HELD, MOST_HELD);
        assertThat((double) sideHeld / BLOCKS).as("sides held").isBetween(LEAST_HELD, MOST_HELD);
        assertThat((double) tiring / BLOCKS).as("tiring called").isLessThan(MOST_CALLED);
        if (tiringTold == BLOCKS) {
            assertThat((double) tiringHeld / BLOCKS).as("tiring held").isBetween(LEAST_HELD, MOST_HELD);
        } else {
            assertThat(kind).as("told of %d blocks", tiringTold).isIn("no height", "few landings");
        }
    }

    /** Twice the smallest change that the typical error allows: the day's own scatter of medians is about 1.25 here. */
    @ParameterizedTest
    @ValueSource(strings = {"equal", "no height", "twelve sessions", "boxes rise", "left boxes higher"})
    void twiceTheSmallestChange_isFound(String kind) {
        double change = 2 * TrendAnalysis.MDC_FACTOR * expectedError(kind);
        int rising = 0;
        int left = 0;
        for (int k = 0; k < BLOCKS; k++) {
            double weeks = simulated(kind, k).weeksOfNext();
            SimulatedBlock simulated = simulated(kind, k);
            simulated.perWeek = change / weeks;
            rising += "rising".equals(simulated.course().trend().verdict()) ? 1 : 0;
            simulated.perWeek = 0;
            simulated.leftMinusRight = change;
            left += "left greater".equals(simulated.course().sides().verdict()) ? 1 : 0;
        }
        double least = 0.95 - 2 * Math.sqrt(0.95 * 0.05 / BLOCKS);
        assertThat((double) left / BLOCKS).as("sides found").isGreaterThan(least);
        assertThat((double) rising / BLOCKS).as("trend found").isGreaterThan(least);
    }

    /** Left always from one box, right from another, both feet from a third: what the boxes do is the feet's, and no trend's. */
    @Test
    void eachFootItsOwnBox_leavesTheTrendAsItIs() {
        double change = 0;
        int called = 0;
        int held = 0;
        for (int k = 0; k < BLOCKS; k++) {
            MeasureCourse course = own(k).course();
            change += 2 * Objects.requireNonNull(course.mdc95()) / BLOCKS;
            Trend trend = course.trend();
            called += Trend.NO_CLEAR_CHANGE.equals(trend.verdict()) ? 0 : 1;
            held += holds(Objects.requireNonNull(trend.low()), Objects.requireNonNull(trend.high()), 0) ? 1 : 0;
            assertThat(course.sides().difference()).isNull();
        }
        int found = 0;
        for (int k = 0; k < BLOCKS; k++) {
            double weeks = own(k).weeksOfNext();
            SimulatedBlock rising = own(k);
            rising.perWeek = change / weeks;
            found += Trend.RISING.equals(rising.course().trend().verdict()) ? 1 : 0;
        }
        assertThat((double) called / BLOCKS).isLessThan(MOST_CALLED);
        assertThat((double) held / BLOCKS).isBetween(LEAST_HELD, MOST_HELD);
        assertThat((double) found / BLOCKS).isGreaterThan(0.95 - 2 * Math.sqrt(0.95 * 0.05 / BLOCKS));
    }

    private static SimulatedBlock own(long seed) {
        SimulatedBlock simulated = new SimulatedBlock(seed);
        simulated.ownBoxes = true;
        return simulated;
    }

    @ParameterizedTest
    @ValueSource(strings = {"equal", "boxes rise", "twelve sessions"})
    void formHeight_isNearTheTruth_andItsIntervalHoldsIt(String kind) {
        SimulatedBlock simulated = simulated(kind, kind.hashCode());
        simulated.formScatterM = 0.04;
        List<Double> off = new ArrayList<>();
        int held = 0;
        int trendHeld = 0;
        int blocks = 200;
        for (int k = 0; k < blocks; k++) {
            Block block = simulated.make();
            FormHeight found = block.formHeight();
            var trend = Objects.requireNonNull(block.formHeightTrend().interval());
            trendHeld += holds(trend.low(), trend.high(), 0) ? 1 : 0;
            if (found.heightM() != null) {
                off.add(Math.abs(found.heightM() - SimulatedBlock.HALF_HELD_M));
            }
            double low = found.low() == null ? 0 : found.low();
            double high = found.high() == null ? 9 : found.high();
            held += holds(low, high, SimulatedBlock.HALF_HELD_M) ? 1 : 0;
        }
        double median = Median.withDefaults()
                .evaluate(off.stream().mapToDouble(Double::doubleValue).toArray());
        assertThat(median).isLessThan(0.06);
        assertThat((double) held / blocks).isBetween(0.93 - 0.036, 0.97 + 0.024);
        assertThat((double) trendHeld / blocks).as("form height a week").isBetween(0.93 - 0.036, 0.97 + 0.024);
    }

    private static double expectedError(String kind) {
        SimulatedBlock simulated = simulated(kind, kind.hashCode());
        double squares = 0;
        for (int k = 0; k < 50; k++) {
            double error = Objects.requireNonNull(simulated.course().typicalError());
            squares += error * error / 50;
        }
        return Math.sqrt(squares);
    }

    private static boolean holds(double low, double high, double truth) {
        return low <= truth && truth <= high;
    }
}

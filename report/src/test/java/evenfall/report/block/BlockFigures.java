package evenfall.report.block;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;

/** Prints what docs/method.md says of tiring and of form height over the weeks; argument: blocks a kind. */
final class BlockFigures {

    private BlockFigures() {}

    private static Map<String, Consumer<SimulatedBlock>> kinds() {
        Map<String, Consumer<SimulatedBlock>> kinds = new LinkedHashMap<>();
        kinds.put("eight sessions", block -> {});
        kinds.put("four sessions", block -> block.sessions = 4);
        kinds.put("twelve sessions", block -> block.sessions = 12);
        kinds.put("days scatter", block -> block.dayScatter = 4);
        kinds.put("boxes rise over the weeks", block -> block.boxesRise = true);
        kinds.put("wild landings", block -> block.wild = 0.05);
        kinds.put("tires otherwise each day", block -> block.tiringScatter = 0.15);
        kinds.put("boxes climb within each session", block -> block.ladder = true);
        kinds.put("the same, height acts from a threshold", block -> {
            block.ladder = true;
            block.height = h -> h > 0.7 ? 12 : 2;
        });
        kinds.put("ten landings a session", block -> block.perSession = 10);
        return kinds;
    }

    public static void main(String[] args) {
        int blocks = args.length > 0 ? Integer.parseInt(args[0]) : 400;
        System.out.println("tiring: called and held where nobody tires, found at twice mdc95 over a session, of 100");
        kinds().forEach((name, change) -> tiring(name, change, blocks));
        System.out.println(
                "form height a week: called and held where it stands, held and found at 3 cm a week, of 100");
        for (int sessions : new int[] {4, 8, 12}) {
            for (boolean rise : new boolean[] {false, true}) {
                formHeight(sessions, rise, blocks);
            }
        }
    }

    private static SimulatedBlock block(long seed, Consumer<SimulatedBlock> change) {
        SimulatedBlock block = new SimulatedBlock(seed);
        change.accept(block);
        return block;
    }

    private static void tiring(String name, Consumer<SimulatedBlock> change, int blocks) {
        int told = 0;
        int called = 0;
        int held = 0;
        double squares = 0;
        for (int k = 0; k < blocks; k++) {
            MeasureCourse course = block(k, change).course();
            var interval = course.tiring().interval();
            double error = Objects.requireNonNull(course.typicalError());
            squares += error * error / blocks;
            if (interval != null) {
                told++;
                called += Trend.NO_CLEAR_CHANGE.equals(course.tiring().verdict()) ? 0 : 1;
                held += interval.low() <= 0 && interval.high() >= 0 ? 1 : 0;
            }
        }
        double twice = 2 * TrendAnalysis.MDC_FACTOR * Math.sqrt(squares);
        int found = 0;
        int covered = 0;
        for (int k = 0; k < blocks; k++) {
            SimulatedBlock block = block(1_000_000L + k, change);
            block.perLanding = twice / (block.perSession - 1);
            Tiring tiring = block.course().tiring();
            found += Trend.RISING.equals(tiring.verdict()) ? 1 : 0;
            var interval = tiring.interval();
            covered += interval != null && interval.low() <= block.perLanding && interval.high() >= block.perLanding
                    ? 1
                    : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "%s: told of %.0f, called %.1f, held %.1f, found %.1f, its interval then held %.1f%n",
                name,
                100.0 * told / blocks,
                100.0 * called / blocks,
                100.0 * held / Math.max(1, told),
                100.0 * found / blocks,
                100.0 * covered / blocks);
    }

    private static void formHeight(int sessions, boolean rise, int blocks) {
        int called = 0;
        int held = 0;
        int heldRising = 0;
        int found = 0;
        for (int k = 0; k < blocks; k++) {
            FormHeightTrend still = trend(k, sessions, rise, 0);
            called += Trend.NO_CLEAR_CHANGE.equals(still.verdict()) ? 0 : 1;
            held += holds(still, 0);
            FormHeightTrend rising = trend(1_000_000L + k, sessions, rise, 0.03);
            heldRising += holds(rising, 0.03);
            found += Trend.RISING.equals(rising.verdict()) ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "%d sessions%s: called %.1f, held %.1f, held at 3 cm %.1f, found %.1f%n",
                sessions,
                rise ? ", boxes rise" : "",
                100.0 * called / blocks,
                100.0 * held / blocks,
                100.0 * heldRising / blocks,
                100.0 * found / blocks);
    }

    private static FormHeightTrend trend(long seed, int sessions, boolean rise, double perWeek) {
        SimulatedBlock block = new SimulatedBlock(seed);
        block.sessions = sessions;
        block.boxesRise = rise;
        block.formScatterM = 0.04;
        block.formPerWeekM = perWeek;
        return FormHeightTrendAnalysis.find(block.landings());
    }

    private static int holds(FormHeightTrend trend, double truth) {
        var interval = trend.interval();
        return interval != null && interval.low() <= truth && interval.high() >= truth ? 1 : 0;
    }
}

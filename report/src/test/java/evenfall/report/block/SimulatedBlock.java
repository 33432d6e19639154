package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.MeasureList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Landings of a block whose truth is known: a level of each day, scatter between landings, what height does, a trend of the
 * person, a difference between the feet, boxes that rise or differ by side.
 */
final class SimulatedBlock {

    static final String MEASURE = "spineFlexionDeg.change";
    static final double HALF_HELD_M = 0.9;
    private static final List<Side> SIDES = List.of(Side.LEFT, Side.RIGHT, Side.BOTH);
    private static final int[] DAYS_BETWEEN = {3, 4, 7, 7, 7, 10};
    private static final double[] BOXES = {0.4, 0.6, 0.8, 1.0};
    private static final double[] OWN_BOXES = {0.7, 0.5, 0.9};

    int sessions = 8;
    int perSession = 18;
    double dayScatter = 1;
    double landingScatter = 2;
    double perWeek;
    double leftMinusRight;
    double sideScatter;
    double heightScatter;
    double wild;
    boolean boxesRise;
    boolean leftBoxesHigher;
    boolean oneBoxADay;
    boolean ownBoxes;
    boolean noted = true;
    double formScatterM;
    double formPerWeekM;
    double perLanding;
    double tiringScatter;
    boolean ladder;
    DoubleUnaryOperator height = h -> 6 * h;

    private final SplittableRandom random;

    SimulatedBlock(long seed) {
        this.random = new SplittableRandom(seed);
    }

    private double weeks;

    /** A block with all that is looked for in one. */
    Block make() {
        return BlockAnalysis.of("ada", List.of(), landings(), Map.of());
    }

    /** The measure alone, as it comes out of a block: what else a block looks for takes three times as long. */
    MeasureCourse course() {
        return new CourseAnalysis(MeasureList.named(MEASURE).orElseThrow(), landings(), noted)
                .course(new Chances(1, 1, 1, 1));
    }

    List<BlockLanding> landings() {
        List<BlockLanding> landings = new ArrayList<>();
        LocalDate start = LocalDate.of(2026, 3, 2);
        LocalDate day = start;
        for (int s = 0; s < sessions; s++) {
            day = s == 0 ? day : day.plusDays(DAYS_BETWEEN[random.nextInt(DAYS_BETWEEN.length)]);
            double week = (day.toEpochDay() - start.toEpochDay()) / 7.0;
            weeks = week;
            double level = dayScatter * normal();
            double sides = leftMinusRight + sideScatter * normal();
            double steeper = heightScatter * normal();
            double held = HALF_HELD_M + formPerWeekM * week + formScatterM * normal();
            double tiring = perLanding + (tiringScatter > 0 ? tiringScatter * normal() : 0);
            int count = Math.max(6, perSession - 4 + random.nextInt(9));
            for (int k = 0; k < count; k++) {
                Side side = SIDES.get(random.nextInt(SIDES.size()));
                double box = BOXES[
                        oneBoxADay
                                ? s * BOXES.length / sessions
                                : ladder
                                        ? Math.min(BOXES.length - 1, k * BOXES.length / count)
                                        : random.nextInt(BOXES.length)];
                box *= boxesRise ? 0.7 + 0.6 * s / (sessions - 1) : 1;
                box = ownBoxes ? OWN_BOXES[SIDES.indexOf(side)] : box;
                box += leftBoxesHigher && side == Side.LEFT ? 0.15 : 0;
                double value = height.applyAsDouble(box)
                        + level
                        + perWeek * week
                        + tiring * (k + 1)
                        + (side == Side.LEFT ? sides / 2 : side == Side.RIGHT ? -sides / 2 : 0)
                        + steeper * (box - 0.7)
                        + landingScatter * normal() * (random.nextDouble() < wild ? 8 : 1);
                Form form = random.nextDouble() < 1 / (1 + Math.exp((box - held) / 0.12)) ? Form.HELD : Form.STRAINED;
                landings.add(landing(day, k + 1, side, noted ? box : null, form, value));
            }
        }
        return landings;
    }

    /** Draws a block and says only how many weeks it spans. */
    double weeksOfNext() {
        landings();
        return weeks;
    }

    private double normal() {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    private static BlockLanding landing(
            LocalDate day, int index, Side side, @Nullable Double height, Form form, double value) {
        return new BlockLanding(new SessionDate(day, 0), index, side, height, false, form, Map.of(MEASURE, value));
    }
}

package evenfall.ingest.recording;

import java.util.BitSet;
import java.util.OptionalDouble;

/**
 * Finds the samples in which a sensor stood at its full scale.
 *
 * <p>Where the range is stated, a sample is clipped from {@value #STATED_SHARE} of it. Else full scale is inferred axis by
 * axis from the samples themselves: from the grid on which the numbers lie, when the extreme is an end value of a word
 * (32767 or -32768 grid steps count even once, end values of shorter words when they repeat), or from an extreme that
 * repeats and is entered and left steeply, as no smooth peak is.
 */
final class FullScale {

    private static final double STATED_SHARE = 0.98;

    /** Word lengths looked for, less the sign bit: from 12 to 24 bits. */
    private static final int SHORTEST_WORD = 11;

    private static final int SURE_WORD = 15;
    private static final int LONGEST_WORD = 23;

    /** A plateau must be left by this many grid steps on both sides; three equal samples of a smooth peak by four. */
    private static final double STEEP_STEPS = 20;

    /** So many samples at an extreme, two of them in a row, make a plateau. */
    private static final int PLATEAU_SAMPLES = 5;

    /** So many samples in a row at an extreme make a plateau. */
    private static final int PLATEAU_RUN = 3;

    /** No accelerometer sold clips below 2 g, no gyroscope below 125 deg/s; common practice, no source. */
    private static final double LOWEST_ACCELERATION = 1.9 * Gravity.STANDARD;

    private static final double LOWEST_TURN_RATE = Math.toRadians(118);

    /** How near to a usual range, in doublings. */
    private static final double USUAL_WITHIN = 0.005;

    /** Scale factors of the axes differ by less than this; common practice, no source. */
    private static final double LIKE_OTHER_AXES = 0.9;

    private final SampleColumns columns;
    private final int firstColumn;
    private double lowest;
    private final BitSet clipped = new BitSet();
    private double range;

    private FullScale(SampleColumns columns, int firstColumn) {
        this.columns = columns;
        this.firstColumn = firstColumn;
        this.lowest = firstColumn == 0 ? LOWEST_ACCELERATION : LOWEST_TURN_RATE;
    }

    /**
     * Looks at one sensor.
     *
     * @param firstColumn 0 for the accelerometer, 3 for the gyroscope
     * @param stated the range if it is stated, in the unit of the columns
     */
    static FullScale of(SampleColumns columns, int firstColumn, OptionalDouble stated) {
        FullScale scale = new FullScale(columns, firstColumn);
        if (stated.isPresent()) {
            scale.markStated(stated.getAsDouble());
        } else {
            scale.raiseToLargest();
            for (int axis = 0; axis < 3; axis++) {
                scale.infer(firstColumn + axis);
            }
        }
        return scale;
    }

    /** The clipped samples. */
    BitSet clipped() {
        return clipped;
    }

    /** The range, stated or seen. */
    OptionalDouble range() {
        return range > 0 ? OptionalDouble.of(range) : OptionalDouble.empty();
    }

    private void markStated(double stated) {
        range = stated;
        double limit = STATED_SHARE * stated;
        for (int i = 0; i < columns.size(); i++) {
            if (Math.abs(columns.value(firstColumn, i)) >= limit
                    || Math.abs(columns.value(firstColumn + 1, i)) >= limit
                    || Math.abs(columns.value(firstColumn + 2, i)) >= limit) {
                clipped.set(i);
            }
        }
    }

    /** The axes of a sensor share a range, so full scale is not far below the largest value of any of them. */
    private void raiseToLargest() {
        float largest = 0;
        for (int i = 0; i < columns.size(); i++) {
            for (int axis = 0; axis < 3; axis++) {
                largest = Math.max(largest, Math.abs(columns.value(firstColumn + axis, i)));
            }
        }
        lowest = Math.max(lowest, LIKE_OTHER_AXES * largest);
    }

    private void infer(int column) {
        double step = NumberGrid.step(columns, column);
        Extreme top = new Extreme(column, 1, step);
        Extreme bottom = new Extreme(column, -1, step);
        double fullScale = Math.max(top.fullScale(), bottom.fullScale());
        if (fullScale > 0) {
            range = Math.max(range, fullScale);
            // One step short of the upper end, for words that are symmetric and those that are not.
            mark(column, fullScale - 1.5 * step);
        }
        if (!(fullScale > 0)) {
            markPlateau(column, top);
            markPlateau(column, bottom);
        }
    }

    private void mark(int column, double level) {
        for (int i = 0; i < columns.size(); i++) {
            if (Math.abs(columns.value(column, i)) >= level) {
                clipped.set(i);
            }
        }
    }

    private void markPlateau(int column, Extreme extreme) {
        if (extreme.isPlateau()) {
            range = Math.max(range, Math.abs(extreme.value));
            for (int i = 0; i < columns.size(); i++) {
                if (columns.value(column, i) == extreme.value) {
                    clipped.set(i);
                }
            }
        }
    }

    /** The highest or lowest value of a column and how often it is reached. */
    private final class Extreme {
        private final double step;
        private final int sign;
        private final float value;
        private int count;
        private int steepRuns;
        private int longestRun;

        Extreme(int column, int sign, double step) {
            this.step = step;
            this.sign = sign;
            int n = columns.size();
            float extreme = columns.value(column, 0);
            for (int i = 1; i < n; i++) {
                float next = columns.value(column, i);
                extreme = sign > 0 ? Math.max(extreme, next) : Math.min(extreme, next);
            }
            value = extreme;
            // Values that lie on no grid are as fine as a 16-bit word at least.
            double steep = STEEP_STEPS * (step > 0 ? step : Math.abs(extreme) / (1 << SURE_WORD));
            int run = 0;
            for (int i = 0; i <= n; i++) {
                if (i < n && columns.value(column, i) == extreme) {
                    run++;
                } else if (run > 0) {
                    count += run;
                    int before = i - run - 1;
                    boolean alone = before >= 0
                            && i < n
                            && Math.abs(extreme - columns.value(column, before)) > steep
                            && Math.abs(extreme - columns.value(column, i)) > steep;
                    if (run > 1 && alone) {
                        steepRuns++;
                        longestRun = Math.max(longestRun, run);
                    }
                    run = 0;
                }
            }
        }

        /** The full scale of the word of which this is an end value; 0 if it is none. */
        double fullScale() {
            double steps = sign * value / step;
            for (int word = SHORTEST_WORD; word <= LONGEST_WORD; word++) {
                double end = 1L << word;
                boolean atEnd = Math.abs(steps - end) < 0.3 || Math.abs(steps - (end - 1)) < 0.3;
                if (atEnd && end * step > lowest && (word >= SURE_WORD || count > 1 || isUsual(end * step))) {
                    return end * step;
                }
            }
            return 0;
        }

        /** Whether sensors are sold with this range: 2, 3 g or 125, 245 deg/s doubled some times; common practice. */
        private boolean isUsual(double fullScale) {
            double[] smallest = firstColumn == 0
                    ? new double[] {2 * Gravity.STANDARD, 3 * Gravity.STANDARD}
                    : new double[] {Math.toRadians(125), Math.toRadians(245)};
            for (double range : smallest) {
                double doublings = Math.log(fullScale / range) / Math.log(2);
                if (Math.abs(doublings - Math.rint(doublings)) < USUAL_WITHIN && doublings < 7) {
                    return true;
                }
            }
            return false;
        }

        boolean isPlateau() {
            boolean flat = longestRun >= PLATEAU_RUN || steepRuns > 1 || (steepRuns > 0 && count >= PLATEAU_SAMPLES);
            return sign * value > lowest && flat;
        }
    }
}

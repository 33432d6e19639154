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

    static final double STATED_SHARE = 0.98;

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
    static final double LOWEST_ACCELERATION = 1.9 * Gravity.STANDARD;

    static final double LOWEST_TURN_RATE = Math.toRadians(118);

    /** How near to a usual range, in doublings. */
    private static final double USUAL_WITHIN = 0.005;

    /** Scale factors of the axes differ by less than this; common practice, no source. */
    static final double LIKE_OTHER_AXES = 0.9;

    private final SampleColumns columns;
    private final int firstColumn;
    /** Lowest and highest value of each block of each axis, so that only the blocks that matter are looked at again. */
    private final float[][] low;

    private final float[][] high;
    private double lowest;
    private final BitSet clipped = new BitSet();
    private double range;

    private FullScale(SampleColumns columns, int firstColumn) {
        this.columns = columns;
        this.firstColumn = firstColumn;
        int blocks = (columns.size() - 1) / SampleColumns.BLOCK + 1;
        this.low = new float[3][blocks];
        this.high = new float[3][blocks];
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
        scale.lookOver();
        if (stated.isPresent()) {
            scale.markStated(stated.getAsDouble());
        } else {
            scale.raiseToLargest();
            for (int axis = 0; axis < 3; axis++) {
                scale.infer(axis);
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

    private void lookOver() {
        float[] values = new float[SampleColumns.BLOCK];
        for (int axis = 0; axis < 3; axis++) {
            for (int from = 0; from < columns.size(); from += SampleColumns.BLOCK) {
                int count = columns.readValues(firstColumn + axis, from, values);
                low[axis][from / SampleColumns.BLOCK] = least(values, count);
                high[axis][from / SampleColumns.BLOCK] = most(values, count);
            }
        }
    }

    private static float least(float[] values, int count) {
        float least = values[0];
        for (int i = 1; i < count; i++) {
            if (values[i] < least) {
                least = values[i];
            }
        }
        return least;
    }

    private static float most(float[] values, int count) {
        float most = values[0];
        for (int i = 1; i < count; i++) {
            if (values[i] > most) {
                most = values[i];
            }
        }
        return most;
    }

    private void markStated(double stated) {
        range = stated;
        for (int axis = 0; axis < 3; axis++) {
            mark(axis, STATED_SHARE * stated);
        }
    }

    /** The axes of a sensor share a range, so full scale is not far below the largest value of any of them. */
    private void raiseToLargest() {
        float largest = 0;
        for (int axis = 0; axis < 3; axis++) {
            for (int block = 0; block < low[axis].length; block++) {
                largest = Math.max(largest, largest(axis, block));
            }
        }
        lowest = Math.max(lowest, LIKE_OTHER_AXES * largest);
    }

    private float largest(int axis, int block) {
        return Math.max(Math.abs(low[axis][block]), Math.abs(high[axis][block]));
    }

    private void infer(int axis) {
        double step = NumberGrid.step(columns, firstColumn + axis);
        Extreme top = new Extreme(axis, 1, step);
        Extreme bottom = new Extreme(axis, -1, step);
        double fullScale = Math.max(top.fullScale(), bottom.fullScale());
        if (fullScale > 0) {
            range = Math.max(range, fullScale);
            // One step short of the upper end, for words that are symmetric and those that are not.
            mark(axis, fullScale - 1.5 * step);
        }
        if (!(fullScale > 0)) {
            markPlateau(axis, top);
            markPlateau(axis, bottom);
        }
    }

    private void mark(int axis, double level) {
        for (int i = 0; i < columns.size(); i++) {
            if (largest(axis, i / SampleColumns.BLOCK) < level) {
                i |= SampleColumns.BLOCK - 1;
            } else if (Math.abs(columns.value(firstColumn + axis, i)) >= level) {
                clipped.set(i);
            }
        }
    }

    private void markPlateau(int axis, Extreme extreme) {
        if (extreme.isPlateau()) {
            range = Math.max(range, Math.abs(extreme.value));
            for (int i = 0; i < columns.size(); i++) {
                if (!extreme.isIn(i / SampleColumns.BLOCK)) {
                    i |= SampleColumns.BLOCK - 1;
                } else if (columns.value(firstColumn + axis, i) == extreme.value) {
                    clipped.set(i);
                }
            }
        }
    }

    /** The highest or lowest value of a column and how often it is reached. */
    private final class Extreme {
        private final double step;
        private final int sign;
        private final float[] ofBlocks;
        private final float value;
        private int count;
        private int steepRuns;
        private int longestRun;

        Extreme(int axis, int sign, double step) {
            this.step = step;
            this.sign = sign;
            this.ofBlocks = sign > 0 ? high[axis] : low[axis];
            float extreme = ofBlocks[0];
            for (float next : ofBlocks) {
                extreme = sign > 0 ? Math.max(extreme, next) : Math.min(extreme, next);
            }
            value = extreme;
            // Values that lie on no grid are as fine as a 16-bit word at least.
            double steep = STEEP_STEPS * (step > 0 ? step : Math.abs(extreme) / (1 << SURE_WORD));
            findRuns(firstColumn + axis, steep);
        }

        /** Whether a block holds this value. */
        boolean isIn(int block) {
            return ofBlocks[block] == value;
        }

        private void findRuns(int column, double steep) {
            int n = columns.size();
            int run = 0;
            for (int i = 0; i <= n; i++) {
                if (i < n && run == 0 && !isIn(i / SampleColumns.BLOCK)) {
                    i |= SampleColumns.BLOCK - 1;
                } else if (i < n && columns.value(column, i) == value) {
                    run++;
                } else if (run > 0) {
                    count += run;
                    int before = i - run - 1;
                    boolean alone = before >= 0
                            && i < n
                            && Math.abs(value - columns.value(column, before)) > steep
                            && Math.abs(value - columns.value(column, i)) > steep;
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

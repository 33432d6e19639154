package evenfall.ingest.recording;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Samples in blocks outside the Java heap, 28 bytes a sample: six values as 32-bit floats and the time as a count of
 * tenths of a microsecond from the block's first sample. Growing adds a block and copies nothing.
 *
 * <p>Times are kept to a tenth of a microsecond. A block that spans more than the 214 s such a count can hold keeps its
 * times as doubles instead.
 */
final class SampleColumns {

    /** Clock steps of a stored time in a second. */
    private static final double TICKS = 1e7;

    /** Beyond this a count of ticks is no longer exact in a double, s. */
    private static final double LONGEST = 9e8;

    private static final int SHIFT = 12;

    /** Samples of a block. */
    static final int BLOCK = 1 << SHIFT;

    private static final int MASK = BLOCK - 1;
    private static final int COLUMNS = 6;

    private Block[] blocks = new Block[0];
    private int size;

    /** 4096 samples. */
    private static final class Block {
        final FloatBuffer values;
        final IntBuffer offsets;
        final long firstTick;
        double @Nullable [] exact;

        Block(double firstTime) {
            ByteBuffer bytes = ByteBuffer.allocateDirect(BLOCK * (COLUMNS + 1) * Float.BYTES)
                    .order(ByteOrder.nativeOrder());
            values = bytes.slice(0, BLOCK * COLUMNS * Float.BYTES)
                    .order(ByteOrder.nativeOrder())
                    .asFloatBuffer();
            offsets = bytes.slice(BLOCK * COLUMNS * Float.BYTES, BLOCK * Integer.BYTES)
                    .order(ByteOrder.nativeOrder())
                    .asIntBuffer();
            firstTick = Math.abs(firstTime) < LONGEST ? Math.round(firstTime * TICKS) : 0;
            if (!(Math.abs(firstTime) < LONGEST)) {
                exact = new double[BLOCK];
            }
        }

        void time(int at, double time) {
            double[] wide = exact;
            if (wide == null) {
                long offset = Math.abs(time) < LONGEST ? Math.round(time * TICKS) - firstTick : Long.MAX_VALUE;
                if (offset == (int) offset) {
                    offsets.put(at, (int) offset);
                    return;
                }
                wide = new double[BLOCK];
                for (int i = 0; i < at; i++) {
                    wide[i] = time(i);
                }
                exact = wide;
            }
            // Rounded like the others, so that order is kept across blocks.
            wide[at] = Math.abs(time) < LONGEST ? Math.round(time * TICKS) / TICKS : time;
        }

        double time(int at) {
            double[] wide = exact;
            return wide == null ? (firstTick + offsets.get(at)) / TICKS : wide[at];
        }

        void times(int from, int count, double[] into, int at) {
            double[] wide = exact;
            if (wide != null) {
                System.arraycopy(wide, from, into, at, count);
                return;
            }
            for (int i = 0; i < count; i++) {
                into[at + i] = (firstTick + offsets.get(from + i)) / TICKS;
            }
        }
    }

    /** Adds a sample; time in s, not before the last one's. */
    void add(double time, double ax, double ay, double az, double gx, double gy, double gz) {
        int at = size & MASK;
        int block = size >>> SHIFT;
        if (at == 0 && block == blocks.length) {
            blocks = Arrays.copyOf(blocks, blocks.length + 1 + (blocks.length >> 1));
        }
        if (at == 0) {
            blocks[block] = new Block(time);
        }
        Block last = blocks[block];
        last.time(at, time);
        FloatBuffer values = last.values;
        values.put(at, (float) ax);
        values.put(BLOCK + at, (float) ay);
        values.put(2 * BLOCK + at, (float) az);
        values.put(3 * BLOCK + at, (float) gx);
        values.put(4 * BLOCK + at, (float) gy);
        values.put(5 * BLOCK + at, (float) gz);
        size++;
    }

    /** The samples so far, to be read only; later ones do not show in it. */
    SampleColumns snapshot() {
        SampleColumns snapshot = new SampleColumns();
        snapshot.blocks = Arrays.copyOf(blocks, (size + MASK) >>> SHIFT);
        snapshot.size = size;
        return snapshot;
    }

    int size() {
        return size;
    }

    double time(int i) {
        return blocks[i >>> SHIFT].time(i & MASK);
    }

    /** Column 0 to 2 are the accelerometer's x, y, z, 3 to 5 the gyroscope's. */
    float value(int column, int i) {
        return blocks[i >>> SHIFT].values.get((column << SHIFT) + (i & MASK));
    }

    /**
     * Copies a column's values, which is quicker than reading them one by one.
     *
     * @param from index of the first sample
     * @return how many: as many as there are and fit
     */
    int readValues(int column, int from, float[] into) {
        int count = Math.min(into.length, size - from);
        int done = 0;
        while (done < count) {
            int at = (from + done) & MASK;
            int length = Math.min(BLOCK - at, count - done);
            blocks[(from + done) >>> SHIFT].values.get((column << SHIFT) + at, into, done, length);
            done += length;
        }
        return count;
    }

    /** Copies times, s, likewise. */
    int readTimes(int from, double[] into) {
        int count = Math.min(into.length, size - from);
        int done = 0;
        while (done < count) {
            int at = (from + done) & MASK;
            int length = Math.min(BLOCK - at, count - done);
            blocks[(from + done) >>> SHIFT].times(at, length, into, done);
            done += length;
        }
        return count;
    }

    /** Index of the last sample at or before {@code time}; -1 if there is none. */
    int indexAtOrBefore(double time) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (time(middle) <= time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }
}

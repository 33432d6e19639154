package evenfall.ingest.wire;

import java.util.Arrays;

/** The last samples of a sensor as they came, until they can be given; the oldest make room for new ones. */
final class HeldSamples {

    private static final int FIRST = 64;

    private final int most;
    private int[] clocks = new int[0];
    private short[] sequences = new short[0];
    private short[] counts = new short[0];
    private int start;
    private int size;

    /** Holds at most so many. */
    HeldSamples(int most) {
        this.most = most;
    }

    int size() {
        return size;
    }

    boolean full() {
        return size == most;
    }

    void clear() {
        start = 0;
        size = 0;
    }

    /** Adds a sample; says whether an older one had to go for it. */
    boolean add(int sequence, int clock, short[] values) {
        boolean pushedOut = size == most;
        if (pushedOut) {
            start = (start + 1) % most;
            size--;
        } else if (size == clocks.length) {
            // Only before the oldest is ever pushed out, so the ring has not turned yet.
            int length = Math.min(most, Math.max(FIRST, 2 * size));
            clocks = Arrays.copyOf(clocks, length);
            sequences = Arrays.copyOf(sequences, length);
            counts = Arrays.copyOf(counts, 6 * length);
        }
        int at = at(size++);
        clocks[at] = clock;
        sequences[at] = (short) sequence;
        System.arraycopy(values, 0, counts, 6 * at, 6);
        return pushedOut;
    }

    int clock(int i) {
        return clocks[at(i)];
    }

    int sequence(int i) {
        return sequences[at(i)] & 0xFFFF;
    }

    void values(int i, short[] into) {
        System.arraycopy(counts, 6 * at(i), into, 0, 6);
    }

    private int at(int i) {
        int at = start + i;
        return at < clocks.length ? at : at - clocks.length;
    }
}

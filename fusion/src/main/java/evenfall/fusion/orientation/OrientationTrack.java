package evenfall.fusion.orientation;

import evenfall.fusion.rotation.Quaternion;

/**
 * The orientation of one sensor at every sample of its stream: world from sensor, heading free.
 *
 * <p>Row {@code i} is the orientation after the turn rate of sample {@code i} has acted over the interval that ends
 * at sample {@code i}.
 *
 * <p>A row takes eight bytes, so that a session of ten hours fits: which of the four parts is the largest, its sign, and
 * the other three, each to one part in two to the 20th of the range ±1/√2 that they then have. The turn is off by less
 * than 5e-6 rad (0.0003 deg).
 */
public final class OrientationTrack {

    private static final double SCALE = ((1 << 20) - 2) / Math.sqrt(2);
    private static final double STEP = 1 / SCALE;
    private static final long OFFSET = 1 << 19;
    private static final long MASK = (1 << 20) - 1;

    /** Set where the largest part is below 0. */
    private static final long NEGATIVE = 1L << 62;

    private final long[] rows;
    private final int first;
    private final int size;

    private OrientationTrack(long[] rows) {
        this(rows, 0, rows.length);
    }

    private OrientationTrack(long[] rows, int first, int size) {
        this.rows = rows;
        this.first = first;
        this.size = size;
    }

    /**
     * A track over {@code wxyz.length / 4} samples.
     *
     * @param wxyz unit quaternions one after another, scalar first
     */
    public OrientationTrack(float[] wxyz) {
        if (wxyz.length % 4 != 0) {
            throw new IllegalArgumentException("a track takes four numbers a sample, not " + wxyz.length + " in all");
        }
        rows = new long[wxyz.length / 4];
        first = 0;
        size = rows.length;
        for (int i = 0; i < rows.length; i++) {
            rows[i] = pack(wxyz[4 * i], wxyz[4 * i + 1], wxyz[4 * i + 2], wxyz[4 * i + 3]);
        }
    }

    /** Makes a track row by row. */
    static final class Builder {

        private final long[] rows;
        private final Attitude work = new Attitude();
        private final Attitude turned = new Attitude();
        private int size;

        /** A track of exactly {@code size} rows. */
        Builder(int size) {
            rows = new long[size];
        }

        /** Adds a row of unit length. */
        void add(double w, double x, double y, double z) {
            rows[size++] = pack(w, x, y, z);
        }

        /** Number of rows so far. */
        int size() {
            return size;
        }

        /**
         * Turns row {@code i} in the world by {@code turn}, then by a small level turn, then about the vertical.
         *
         * @param x level turn about x, rad
         * @param y level turn about y, rad
         * @param cosine of half the turn about the vertical
         * @param sine of half the turn about the vertical
         */
        void turn(int i, Attitude turn, double x, double y, double cosine, double sine) {
            unpack(rows[i], work);
            turned.setProduct(turn, work);
            turned.tiltBy(1, x / 2, y / 2);
            rows[i] = pack(
                    cosine * turned.w - sine * turned.z,
                    cosine * turned.x - sine * turned.y,
                    cosine * turned.y + sine * turned.x,
                    cosine * turned.z + sine * turned.w);
        }

        OrientationTrack build() {
            if (size != rows.length) {
                throw new IllegalStateException(size + " rows of " + rows.length);
            }
            return new OrientationTrack(rows);
        }
    }

    /**
     * The latest rows of a track that goes on and on. Rows that were told stay as they are while others are added; the oldest
     * are let go.
     */
    static final class Tail {

        private final int kept;
        private long[] rows;
        private int first;
        private int size;

        /** A tail that keeps at least the last {@code kept} rows. */
        Tail(int kept) {
            this.kept = kept;
            this.rows = new long[2 * kept];
        }

        /** Adds a row of unit length. */
        void add(double w, double x, double y, double z) {
            if (size - first == rows.length) {
                // Tracks that were told share the old rows, so they are left as they are.
                long[] next = new long[rows.length];
                System.arraycopy(rows, rows.length - kept, next, 0, kept);
                rows = next;
                first = size - kept;
            }
            rows[size++ - first] = pack(w, x, y, z);
        }

        int size() {
            return size;
        }

        /** The track so far; rows added later do not show in it. */
        OrientationTrack track() {
            return new OrientationTrack(rows, first, size);
        }
    }

    /** Number of samples. */
    public int size() {
        return size;
    }

    /** The first sample whose orientation is known: 0 but for the tail of a long track. */
    public int first() {
        return first;
    }

    /** Scalar part at sample {@code i}. */
    public double w(int i) {
        return at(i).w();
    }

    /** First vector part at sample {@code i}. */
    public double x(int i) {
        return at(i).x();
    }

    /** Second vector part at sample {@code i}. */
    public double y(int i) {
        return at(i).y();
    }

    /** Third vector part at sample {@code i}. */
    public double z(int i) {
        return at(i).z();
    }

    /** World from sensor at sample {@code i}, of unit length. */
    public Quaternion at(int i) {
        long row = rows[i - first];
        double a = part(row >>> 40);
        double b = part(row >>> 20);
        double c = part(row);
        double largest = largest(row, a, b, c);
        return switch ((int) (row >>> 60 & 3)) {
            case 0 -> new Quaternion(largest, a, b, c);
            case 1 -> new Quaternion(a, largest, b, c);
            case 2 -> new Quaternion(a, b, largest, c);
            default -> new Quaternion(a, b, c, largest);
        };
    }

    private static double largest(long row, double a, double b, double c) {
        double size = Math.sqrt(Math.max(0, 1 - a * a - b * b - c * c));
        return (row & NEGATIVE) == 0 ? size : -size;
    }

    private static void unpack(long row, Attitude into) {
        double a = part(row >>> 40);
        double b = part(row >>> 20);
        double c = part(row);
        double largest = largest(row, a, b, c);
        switch ((int) (row >>> 60 & 3)) {
            case 0 -> into.set(largest, a, b, c);
            case 1 -> into.set(a, largest, b, c);
            case 2 -> into.set(a, b, largest, c);
            default -> into.set(a, b, c, largest);
        }
    }

    private static long pack(double w, double x, double y, double z) {
        double aw = Math.abs(w);
        double ax = Math.abs(x);
        double ay = Math.abs(y);
        double az = Math.abs(z);
        if (aw >= ax && aw >= ay && aw >= az) {
            return pack(0, w, x, y, z);
        }
        if (ax >= ay && ax >= az) {
            return pack(1, x, w, y, z);
        }
        return ay >= az ? pack(2, y, w, x, z) : pack(3, z, w, x, y);
    }

    private static long pack(long which, double largest, double a, double b, double c) {
        return (largest < 0 ? NEGATIVE : 0) | (which << 60) | (bits(a) << 40) | (bits(b) << 20) | bits(c);
    }

    private static long bits(double part) {
        return (Math.round(part * SCALE) + OFFSET) & MASK;
    }

    private static double part(long bits) {
        return ((bits & MASK) - OFFSET) * STEP;
    }
}

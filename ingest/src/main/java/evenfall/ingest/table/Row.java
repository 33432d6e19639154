package evenfall.ingest.table;

/** The numbers of one row, as they stand in the file; filled anew for every row. */
final class Row {

    /** The number in the time column; not set for ISO 8601. */
    double time;

    /** Nanoseconds of an ISO 8601 time. */
    long nanos;

    /** x, y, z of the accelerometer, then of the gyroscope. */
    final double[] values = new double[6];
}

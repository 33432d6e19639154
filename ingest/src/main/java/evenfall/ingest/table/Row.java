package evenfall.ingest.table;

/** The numbers of one row, as they stand in the file; filled anew for every row. */
final class Row {

    /** The time: the number, or nanoseconds for ISO 8601; the whole of it fits a double but for times past 1970. */
    double time;

    /** Nanoseconds of an ISO 8601 time. */
    long nanos;

    /** x, y, z of the accelerometer, then of the gyroscope. */
    final double[] values = new double[6];
}

package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;

/**
 * Means and scatter of a short stretch.
 *
 * @param atS when it begins, s
 * @param acceleration length of the mean specific force, m/s²
 * @param accelerationScatter root mean square distance from that mean, m/s²
 * @param gx mean turn rate about x, and so on, rad/s
 * @param turnRateScatter root mean square distance from the mean turn rate, rad/s
 */
record Window(
        double atS,
        double acceleration,
        double accelerationScatter,
        double gx,
        double gy,
        double gz,
        double turnRateScatter) {

    /**
     * The stretch of samples from {@code from} on, as many as {@code scratch} holds.
     *
     * @param scratch is written over
     */
    static Window of(SensorStream stream, int from, float[] scratch) {
        int length = scratch.length;
        double[] sum = new double[6];
        double[] squares = new double[6];
        for (Axis axis : Axis.values()) {
            int c = axis.column();
            stream.readAxis(c, from, scratch);
            double origin = scratch[0];
            double mean = sum(scratch, origin) / length;
            squares[c] = Math.max(0, sumOfSquares(scratch, origin) / length - mean * mean);
            sum[c] = mean + origin;
        }
        return new Window(
                stream.time(from),
                Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]),
                Math.sqrt(squares[0] + squares[1] + squares[2]),
                sum[3],
                sum[4],
                sum[5],
                Math.sqrt(squares[3] + squares[4] + squares[5]));
    }

    private static double sum(float[] values, double origin) {
        double sum = 0;
        for (float value : values) {
            sum += value - origin;
        }
        return sum;
    }

    private static double sumOfSquares(float[] values, double origin) {
        double sum = 0;
        for (float value : values) {
            double off = value - origin;
            sum += off * off;
        }
        return sum;
    }
}

package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;

/** What a sensor reads on the whole over a stretch of samples. */
final class Means {

    private Means() {}

    /**
     * Mean direction of force and mean turn rate over the samples from {@code from} on, as many as {@code scratch} holds.
     *
     * @param scratch is written over
     * @param into is given the direction of the mean force, nothing where there is no force, and the mean turn rate, rad/s
     * @return size of the mean force, m/s²
     */
    static double of(SensorStream stream, int from, float[] scratch, double[] into) {
        for (int axis = 0; axis < 6; axis++) {
            stream.readAxis(axis, from, scratch);
            into[axis] = sum(scratch) / scratch.length;
        }
        double force = Math.sqrt(into[0] * into[0] + into[1] * into[1] + into[2] * into[2]);
        for (int c = 0; c < 3; c++) {
            into[c] = force > 0 ? into[c] / force : 0;
        }
        return force;
    }

    private static double sum(float[] values) {
        double sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum;
    }
}

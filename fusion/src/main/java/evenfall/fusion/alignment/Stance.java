package evenfall.fusion.alignment;

import evenfall.fusion.rotation.Vector3;

/**
 * A stretch in which one sensor does not move: samples {@code from} (inclusive) to {@code to} (exclusive).
 *
 * @param from index of the first sample
 * @param to index after the last sample
 * @param startS time of the first sample, s on the sensor's clock
 * @param endS time of the last sample, s on the sensor's clock
 * @param force mean specific force, sensor axes, m/s²: gravity's reaction, plus the accelerometer's bias
 * @param rate mean turn rate, sensor axes, rad/s: the gyroscope's bias
 */
public record Stance(int from, int to, double startS, double endS, Vector3 force, Vector3 rate) {

    /** Length, s. */
    public double lengthS() {
        return endS - startS;
    }

    /** Time in the middle, s. */
    public double middleS() {
        return (startS + endS) / 2;
    }
}

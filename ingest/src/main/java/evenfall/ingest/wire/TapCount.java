package evenfall.ingest.wire;

import java.util.Arrays;

/**
 * Counts taps of a finger on one sensor. A tap is a blow: force differs by {@value #BLOW} m/s² or more from the usual;
 * short: {@value #SHORT_S} s later it is the usual again, within {@value #CALM} m/s²; and set apart from the tap before.
 * What is a blow and not short is no tap, and taps around it do not count. The sizes are common practice, no
 * source; {@code TapWatchTest} shows what they tell apart.
 */
final class TapCount {

    /** Three taps within this are a sign. */
    static final double WITHIN_S = 2;

    static final double BLOW = 6;
    static final double SHORT_S = 0.12;
    static final double CALM = 2;

    private static final int TAPS = 3;
    private static final double APART_S = 0.15;

    /** So long after the third tap there is an answer: by then the others' samples have come. */
    private static final double AFTER_S = 0.3;

    private static final double HOLDS_S = 1;

    /** How fast the usual force follows, s. */
    private static final double USUAL_S = 0.5;

    private final int sensor;
    private final double[] taps = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    private final double[] usual = new double[3];
    private boolean begun;
    private boolean open;
    private double openedS;
    private double latestS;
    private double movedS = Double.NEGATIVE_INFINITY;
    private double shakenS = Double.NEGATIVE_INFINITY;
    private long lastArrival;
    private long lastTapArrival;

    TapCount(int sensor) {
        this.sensor = sensor;
    }

    int sensor() {
        return sensor;
    }

    /** When, by the count of all sensors' samples, the last sample came. */
    long lastArrival() {
        return lastArrival;
    }

    /** When, by the count of all sensors' samples, the last tap was over. */
    long lastTapArrival() {
        return lastTapArrival;
    }

    void add(long arrival, double timeS, double ax, double ay, double az) {
        lastArrival = arrival;
        if (!begun || timeS < latestS) {
            // The first sample, or a sensor that started anew.
            forget(timeS, ax, ay, az);
        }
        double stepS = timeS - latestS;
        latestS = timeS;
        double away = distance(usual, ax, ay, az);
        movedS = away > CALM ? timeS : movedS;
        if (open && timeS >= openedS + SHORT_S) {
            close(arrival, away <= CALM);
            if (away > CALM) {
                // The sensor may have been turned: what it says now is the usual from now on.
                set(ax, ay, az);
                away = 0;
            }
        }
        if (!open && timeS >= taps[TAPS - 1] + APART_S && away >= BLOW) {
            open = true;
            openedS = timeS;
        }
        if (!open) {
            double share = Math.min(1, stepS / USUAL_S);
            set(
                    usual[0] + share * (ax - usual[0]),
                    usual[1] + share * (ay - usual[1]),
                    usual[2] + share * (az - usual[2]));
        }
    }

    /** Whether there were three taps just now, and nothing else. */
    boolean tapped() {
        double third = taps[TAPS - 1];
        return third - taps[0] <= WITHIN_S
                && latestS - third >= AFTER_S
                && latestS - third <= HOLDS_S
                && shakenS < taps[0] - WITHIN_S / 2;
    }

    /** Whether force was not the usual one within the last {@value #WITHIN_S} s. */
    boolean movedLately() {
        return latestS - movedS <= WITHIN_S;
    }

    private void close(long arrival, boolean calm) {
        open = false;
        if (calm) {
            System.arraycopy(taps, 1, taps, 0, TAPS - 1);
            taps[TAPS - 1] = openedS;
            lastTapArrival = arrival;
        } else {
            shakenS = openedS;
        }
    }

    private void forget(double timeS, double ax, double ay, double az) {
        begun = true;
        open = false;
        latestS = timeS;
        Arrays.fill(taps, Double.NEGATIVE_INFINITY);
        movedS = Double.NEGATIVE_INFINITY;
        shakenS = Double.NEGATIVE_INFINITY;
        set(ax, ay, az);
    }

    private void set(double x, double y, double z) {
        usual[0] = x;
        usual[1] = y;
        usual[2] = z;
    }

    private static double distance(double[] force, double x, double y, double z) {
        double dx = x - force[0];
        double dy = y - force[1];
        double dz = z - force[2];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}

package evenfall.ingest.quality;

import evenfall.ingest.recording.Gravity;

/** Guesses from what the accelerometer reads at rest which unit its numbers are really in. */
final class UnitGuess {

    /** A guess is made when it explains the reading to within this share. */
    private static final double NEAR = 0.15;

    private UnitGuess() {}

    /** A clause that says what the numbers look like and what to do, for a reading of {@code ratio} g at rest. */
    static String words(double ratio) {
        if (near(ratio, 1 / Gravity.STANDARD)) {
            return "the numbers look like g taken for m/s² (a factor of 9.81); say \"g\" in the header or the layout file";
        }
        if (near(ratio, Gravity.STANDARD)) {
            return "the numbers look like m/s² taken for g (a factor of 9.81); say \"m/s2\" in the header or the layout file";
        }
        if (near(ratio, 1000)) {
            return "the numbers look like mg taken for g (a factor of 1000); say so in the layout file with scale 0.001";
        }
        if (near(ratio, 0.001)) {
            return "the numbers look like g taken for mg (a factor of 1000); say \"g\" in the header or the layout file";
        }
        if (near(ratio, 1000 / Gravity.STANDARD)) {
            return "the numbers look like mg taken for m/s² (a factor of 102); say \"g\" with scale 0.001 in the layout file";
        }
        if (near(ratio, Gravity.STANDARD / 1000)) {
            return "the numbers look like m/s² taken for mg (a factor of 102); say \"m/s2\" in the header or the layout file";
        }
        if (ratio < 0.02) {
            return "the accelerometer may be dead, or its unit or scale far off; look at the sensor and the layout file";
        }
        for (int power = 1; power <= 15; power++) {
            double counts = Math.scalb(1.0, power);
            if (near(ratio, counts) || (near(ratio, counts / Gravity.STANDARD) && power >= 8)) {
                return power < 8
                        ? "everything is " + (int) counts
                                + " times too large, as when the range set in the sensor is not"
                                + " that of the layout file; correct the scale"
                        : "the numbers look like raw counts (about " + (int) counts
                                + " to 1 g); give the scale in the layout file";
            }
            if (near(ratio, 1 / counts)) {
                return "everything is " + (int) counts
                        + " times too small, as when the range set in the sensor is not that"
                        + " of the layout file; correct the scale";
            }
        }
        return "unit or scale is wrong; multiply the scale in the layout file by " + factor(1 / ratio);
    }

    private static boolean near(double ratio, double expected) {
        return Math.abs(Math.log(ratio / expected)) < NEAR;
    }

    private static String factor(double value) {
        return Wording.number(value, value >= 10 ? 1 : value >= 0.1 ? 3 : 6);
    }
}

package evenfall.ingest.quality;

import evenfall.ingest.recording.Gravity;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;

/** Guesses from what the accelerometer reads at rest which unit its numbers are really in. */
final class UnitGuess {

    private static final Words WORDS = Words.beside(UnitGuess.class);

    /** A guess is made when it explains the reading to within this share. */
    private static final double NEAR = 0.15;

    private UnitGuess() {}

    /** A clause that says what the numbers look like and what to do, for a reading of {@code ratio} g at rest. */
    static String words(double ratio) {
        if (near(ratio, 1 / Gravity.STANDARD)) {
            return WORDS.say("unit.g.ms2");
        }
        if (near(ratio, Gravity.STANDARD)) {
            return WORDS.say("unit.ms2.g");
        }
        if (near(ratio, 1000)) {
            return WORDS.say("unit.mg.g");
        }
        if (near(ratio, 0.001)) {
            return WORDS.say("unit.g.mg");
        }
        if (near(ratio, 1000 / Gravity.STANDARD)) {
            return WORDS.say("unit.mg.ms2");
        }
        if (near(ratio, Gravity.STANDARD / 1000)) {
            return WORDS.say("unit.ms2.mg");
        }
        if (ratio < 0.02) {
            return WORDS.say("unit.dead");
        }
        for (int power = 1; power <= 15; power++) {
            double counts = Math.scalb(1.0, power);
            if (near(ratio, counts) || (near(ratio, counts / Gravity.STANDARD) && power >= 8)) {
                return power < 8 ? WORDS.say("unit.large", counts) : WORDS.say("unit.counts", counts);
            }
            if (near(ratio, 1 / counts)) {
                return WORDS.say("unit.small", counts);
            }
        }
        return WORDS.say("unit.wrong", factor(1 / ratio));
    }

    private static boolean near(double ratio, double expected) {
        return Math.abs(Math.log(ratio / expected)) < NEAR;
    }

    private static String factor(double value) {
        return Digits.fixed(value, value >= 10 ? 1 : value >= 0.1 ? 3 : 6);
    }
}

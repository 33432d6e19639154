package evenfall.report.rehearsal;

import java.util.List;
import java.util.SplittableRandom;

/** A line on which things are lost and damaged. */
final class FaultyLine {

    static final byte[] NOTHING = {};

    private static final int MOST_BITS = 4;

    private final Faults faults;
    private final SplittableRandom random;
    private long lost;
    private long damaged;

    FaultyLine(Faults faults) {
        this.faults = faults;
        this.random = new SplittableRandom(faults.seed());
    }

    /** What comes out of the line of something that was said at a moment; {@link #NOTHING} if it is lost. */
    byte[] pass(byte[] said, double timeS) {
        // Drawn whether needed or not, so that a silence does not change what happens after it.
        boolean gone = random.nextDouble() < faults.lost();
        boolean spoilt = random.nextDouble() < faults.damaged();
        if (gone || within(faults.silences(), timeS)) {
            lost++;
            return NOTHING;
        }
        if (!spoilt) {
            return said;
        }
        damaged++;
        byte[] other = said.clone();
        for (int bits = random.nextInt(1, MOST_BITS + 1); bits > 0; bits--) {
            other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return other;
    }

    /** Lines or frames that were not sent. */
    long lost() {
        return lost;
    }

    /** Lines or frames that were sent with turned bits. */
    long damaged() {
        return damaged;
    }

    static boolean within(List<Stretch> stretches, double timeS) {
        for (Stretch stretch : stretches) {
            if (stretch.contains(timeS)) {
                return true;
            }
        }
        return false;
    }
}

package evenfall.ingest.serial;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * Tries the usual speeds in turn until something readable comes. Each speed has {@value #TRIAL_MS} ms from the first byte
 * that comes at it. Bytes are held back until they are readable: those of a wrong speed are noise.
 */
final class SpeedSearch {

    private static final List<Integer> USUAL = SerialPorts.USUAL_SPEEDS;

    static final long TRIAL_MS = 400;

    /** Half a second at the fastest speed; more can only come where there is no speed. */
    private static final int MOST = 1 << 16;

    private final Supplier<SpeedJudge> judges;
    private SpeedJudge judge;
    private byte[] held = new byte[4096];
    private int size;
    private int trial;
    private boolean began;
    private long beganMs;

    /** A search that asks a new judge at each speed. */
    SpeedSearch(Supplier<SpeedJudge> judges) {
        this.judges = judges;
        this.judge = judges.get();
    }

    /** The speed that is tried now, bits a second. */
    int speed() {
        return USUAL.get(trial % USUAL.size());
    }

    /** Whether something came at every speed and was readable at none. */
    boolean inVain() {
        return trial >= USUAL.size();
    }

    /** Whether these bytes, that came at the present speed, show that it is right. */
    boolean heard(byte[] bytes, int count, long nowMs) {
        if (!began) {
            began = true;
            beganMs = nowMs;
        }
        if (size + count > MOST) {
            // Noise without end; a new line begins in what follows.
            size = 0;
        }
        if (size + count > held.length) {
            held = Arrays.copyOf(held, Math.max(2 * held.length, size + count));
        }
        System.arraycopy(bytes, 0, held, size, count);
        size += count;
        return judge.readable(bytes, count);
    }

    /** Whether the present speed has had its time; if so the next one is tried. */
    boolean over(long nowMs) {
        if (!began || nowMs - beganMs < TRIAL_MS) {
            return false;
        }
        trial++;
        began = false;
        size = 0;
        judge = judges.get();
        return true;
    }

    /** What was held back at the present speed. */
    byte[] held() {
        return Arrays.copyOf(held, size);
    }
}

package evenfall.ingest.wire;

import org.jspecify.annotations.Nullable;

/**
 * One sensor that speaks the binary form: counts become values, 32 bits of clock a long time, gaps in the numbering lost
 * samples.
 *
 * <p>Samples wait for a hello in two cases: before the first, since their scale is not known; and after a jump of the
 * clock, since only a hello tells a sensor that started anew from one that was not heard for long and from a chance fit
 * of the checksum.
 */
final class FrameSensor {

    /** Numbers of samples come round after so many. */
    static final int SEQUENCE_ROUND = 1 << 16;

    /** A sample may be this much before the last one: it was held up on the way, µs. */
    private static final long BACK_US = 100_000;

    /** A sample may be this much after the last one: it went on after a silence, µs. */
    private static final long AHEAD_US = 60_000_000;

    private final int sensor;
    private final WireReceiver receiver;
    private final WireTally tally;
    private final HeldSamples held;
    private final short[] values = new short[6];
    private @Nullable Hello hello;
    private double accelerationPerCount;
    private double turnRatePerCount;
    private boolean timed;
    private boolean numbered;
    /** The latest that is known of the sensor's clock, from a sample or a hello. */
    private long clockUs;

    /** Time and number of the last sample that was given, if {@link #numbered}. */
    private long sampleUs;

    private int sequence;

    FrameSensor(int sensor, int hold, WireReceiver receiver, WireTally tally) {
        this.sensor = sensor;
        this.receiver = receiver;
        this.tally = tally;
        this.held = new HeldSamples(hold);
    }

    int sensor() {
        return sensor;
    }

    void sample(int number, int clock, short[] counts) {
        tally.heard();
        if (timed && follows(extended(clock))) {
            dropHeld();
            take(number, extended(clock), counts);
            return;
        }
        if (held.full() && timed) {
            goOn();
            sample(number, clock, counts);
        } else if (held.add(number, clock, counts)) {
            tally.unreadable();
        }
    }

    void hello(Hello said, long nowUs) {
        tally.heard();
        if (!said.equals(hello)) {
            hello = said;
            accelerationPerCount = said.accelerationPerCount();
            turnRatePerCount = said.turnRatePerCount();
        }
        receiver.hello(said);
        if (timed && follows(nowUs)) {
            dropHeld();
        } else {
            numbered &= nowUs > clockUs;
            give(nowUs);
        }
    }

    /** No more will come: gives what can be given. */
    void end() {
        if (timed) {
            goOn();
        }
        for (int i = 0; i < held.size(); i++) {
            tally.unreadable();
        }
        held.clear();
    }

    private boolean follows(long us) {
        return us >= clockUs - BACK_US && us <= clockUs + AHEAD_US;
    }

    /** The time nearest to the last one whose lowest 32 bits these are. */
    private long extended(int clock) {
        return clockUs + (clock - (int) clockUs);
    }

    /** The sensor goes on where it was, so what did not fit in was none of its own. */
    private void dropHeld() {
        for (int i = held.size(); i > 0; i--) {
            tally.damaged();
        }
        held.clear();
    }

    /** No hello comes to explain a jump: forward means a silence, backward a new start. */
    private void goOn() {
        if (held.size() == 0) {
            return;
        }
        long first = extended(held.clock(0));
        boolean anew = first < clockUs;
        numbered &= !anew;
        clockUs = anew ? held.clock(0) & 0xFFFFFFFFL : first;
        long last = clockUs;
        for (int i = 1; i < held.size(); i++) {
            last += held.clock(i) - held.clock(i - 1);
        }
        give(last);
    }

    /** Gives what was held, the last of it at or shortly before {@code nowUs}. */
    private void give(long nowUs) {
        timed = true;
        long time = nowUs;
        for (int i = held.size() - 1; i >= 0; i--) {
            time += held.clock(i) - (int) time;
        }
        for (int i = 0; i < held.size(); i++) {
            time += held.clock(i) - (int) time;
            held.values(i, values);
            take(held.sequence(i), time, values);
        }
        clockUs = nowUs;
        held.clear();
    }

    private void take(int number, long us, short[] counts) {
        if (numbered) {
            if (us <= sampleUs) {
                // Sent twice, or overtaken on the way: then it was counted as lost and stays so.
                return;
            }
            long lost = lost(number, us);
            if (lost > 0) {
                tally.lost(lost);
                receiver.lost(sensor, lost);
            }
        }
        numbered = true;
        sequence = number;
        sampleUs = us;
        clockUs = us;
        tally.good();
        receiver.sample(
                sensor,
                us * 1e-6,
                counts[0] * accelerationPerCount,
                counts[1] * accelerationPerCount,
                counts[2] * accelerationPerCount,
                counts[3] * turnRatePerCount,
                counts[4] * turnRatePerCount,
                counts[5] * turnRatePerCount);
    }

    /** Samples between the last one and this: what the numbering leaves open, whole rounds of it, the clock says. */
    private long lost(int number, long us) {
        int steps = (number - sequence) & (SEQUENCE_ROUND - 1);
        double expected = hello == null ? steps : (us - sampleUs) * 1e-6 * hello.rateHz();
        return steps + SEQUENCE_ROUND * Math.round((expected - steps) / SEQUENCE_ROUND) - 1;
    }
}

package evenfall.ingest.wire;

import evenfall.ingest.recording.Gravity;

/**
 * Reads the text form of the wire: bytes in as they come, samples out, in memory that does not grow.
 *
 * <p>A line is {@code P,<t_ms>,<ax_g>,<ay_g>,<az_g>,<gx_dps>,<gy_dps>,<gz_dps>} for the pelvis or {@code B,…} for the
 * upper back, optionally ended by {@code *} and four hex digits, the checksum of all before the {@code *}; it ends with
 * LF, CR LF or CR. Once a port has sent a right checksum, lines without one are damaged; so that this holds for the
 * very first line too, a first sample without checksum waits for the second. Blank lines and lines that
 * begin with {@code #} are passed over. What stands before the first line end may be half a line, so it is not held
 * against the port when it cannot be read. Not safe for use from several threads.
 */
public final class LineDecoder implements WireDecoder {

    /** A longer line is no sample, bytes. */
    public static final int LONGEST = 192;

    private static final int CHECKSUM_LENGTH = 5;

    /** No body and no sensor of this kind goes beyond these, m/s² and rad/s: such a line is damaged. */
    private static final double IMPOSSIBLE_ACCELERATION = 1000 * Gravity.STANDARD;

    private static final double IMPOSSIBLE_TURN_RATE = Math.toRadians(20_000);
    private static final double LATEST_MS = 1e13;

    private final WireReceiver receiver;
    private final WireTally tally;
    private final byte[] line = new byte[LONGEST];
    private final DecimalField field = new DecimalField();
    private final double[] values = new double[7];
    private int length;
    private boolean tooLong;
    private boolean first = true;
    private Trust trust = Trust.UNDECIDED;
    private final double[] waiting = new double[7];
    private int waitingSensor;

    /** A decoder that hands samples to {@code receiver}. */
    public LineDecoder(WireReceiver receiver) {
        this(receiver, new WireTally());
    }

    LineDecoder(WireReceiver receiver, WireTally tally) {
        this.receiver = receiver;
        this.tally = tally;
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            if (b == '\n' || b == '\r') {
                endLine();
            } else if (length == LONGEST) {
                tooLong = true;
            } else {
                line[length++] = b;
            }
        }
    }

    /** The bytes have come to their end: what is left is a whole line only if it carries its checksum. */
    @Override
    public void end() {
        if (length >= CHECKSUM_LENGTH && line[length - CHECKSUM_LENGTH] == '*') {
            endLine();
        }
        length = 0;
        tooLong = false;
        first = true;
        if (trust == Trust.WAITING) {
            trust = Trust.PLAIN;
            give(waitingSensor, waiting);
        }
    }

    @Override
    public WireCounts counts() {
        return tally.counts();
    }

    private void endLine() {
        int end = length;
        boolean rubbish = tooLong;
        length = 0;
        tooLong = false;
        if (end == 0 || (line[0] == '#' && !rubbish)) {
            return;
        }
        boolean half = first;
        first = false;
        Outcome outcome = rubbish ? Outcome.UNREADABLE : read(end);
        if (outcome == Outcome.SAMPLE || half) {
            return;
        }
        if (outcome == Outcome.DAMAGED) {
            tally.damaged();
        } else {
            tally.unreadable();
        }
        if (begun(end) && tally.mayBeSpoken()) {
            lose(line[0]);
        }
    }

    /** Whether the line, whatever became of it, was begun as a sample. */
    private boolean begun(int end) {
        return end > 1 && (line[0] == 'P' || line[0] == 'B') && line[1] == ',';
    }

    private void lose(int sensor) {
        tally.lost(1);
        receiver.lost(sensor, 1);
    }

    private Outcome read(int end) {
        int body = end;
        if (end > CHECKSUM_LENGTH && line[end - CHECKSUM_LENGTH] == '*') {
            body = end - CHECKSUM_LENGTH;
            if (hex(body + 1) != Crc16.of(line, 0, body)) {
                return Outcome.DAMAGED;
            }
        } else if (trust == Trust.CHECKSUMS) {
            return Outcome.DAMAGED;
        }
        if (!begun(body) || !numbers(body) || !possible()) {
            return Outcome.UNREADABLE;
        }
        // The letters of the text form are the numbers of their sensors.
        int sensor = line[0];
        if (body < end) {
            if (trust == Trust.WAITING) {
                tally.damaged();
                lose(waitingSensor);
            }
            trust = Trust.CHECKSUMS;
        } else if (trust == Trust.UNDECIDED) {
            trust = Trust.WAITING;
            waitingSensor = sensor;
            System.arraycopy(values, 0, waiting, 0, values.length);
            return Outcome.SAMPLE;
        } else if (trust == Trust.WAITING) {
            trust = Trust.PLAIN;
            give(waitingSensor, waiting);
        }
        give(sensor, values);
        return Outcome.SAMPLE;
    }

    private void give(int sensor, double[] row) {
        tally.good();
        receiver.sample(
                sensor,
                row[0] / 1000,
                row[1] * Gravity.STANDARD,
                row[2] * Gravity.STANDARD,
                row[3] * Gravity.STANDARD,
                Math.toRadians(row[4]),
                Math.toRadians(row[5]),
                Math.toRadians(row[6]));
    }

    private boolean numbers(int body) {
        int at = 2;
        for (int c = 0; c < values.length; c++) {
            values[c] = field.read(line, at, body);
            at = field.end();
            boolean last = c == values.length - 1;
            if (Double.isNaN(values[c]) || (last ? at != body : at >= body || line[at] != ',')) {
                return false;
            }
            at++;
        }
        return true;
    }

    private boolean possible() {
        if (!(values[0] >= 0 && values[0] < LATEST_MS)) {
            return false;
        }
        for (int c = 1; c < values.length; c++) {
            double size = Math.abs(values[c]) * (c < 4 ? Gravity.STANDARD : Math.toRadians(1));
            if (!(size <= (c < 4 ? IMPOSSIBLE_ACCELERATION : IMPOSSIBLE_TURN_RATE))) {
                return false;
            }
        }
        return true;
    }

    /** Four hex digits at {@code from}, or -1. */
    private int hex(int from) {
        int value = 0;
        for (int i = from; i < from + 4; i++) {
            int digit = line[i] < 0 ? -1 : Character.digit((char) line[i], 16);
            if (digit < 0) {
                return -1;
            }
            value = 16 * value + digit;
        }
        return value;
    }

    /** What is known of a port's checksums. */
    private enum Trust {
        UNDECIDED,
        /** One sample without checksum is held back until the next line shows whether it lost it. */
        WAITING,
        PLAIN,
        CHECKSUMS
    }

    private enum Outcome {
        SAMPLE,
        DAMAGED,
        UNREADABLE
    }
}

package evenfall.ingest.table;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * Puts good rows in order of time and into SI units, and keeps account of the others.
 *
 * <p>Time that runs backward is never passed on: a row alone that is out of order, behind or far ahead, is left out; where
 * the clock itself jumps and the rows go on from there, they are set one usual interval behind the last good one.
 */
final class SampleCollector {

    private static final Words WORDS = Words.beside(SampleCollector.class);

    /** More bad rows than this, and more than one in a hundred, refuse a file. */
    private static final int BAD_ROWS_ALLOWED = 10;
    /** Bad rows named one by one; the rest are counted. */
    private static final int NAMED = 10;
    /** So many bad rows before the first good one, and the file is given up. */
    private static final int HOPELESS = 20_000;
    /** So many bad rows that are more than the good ones, and the file is given up. */
    private static final int MOSTLY_BAD = 100_000;
    /** So many rows in a row make a new clock rather than a slip. */
    private static final int NEW_CLOCK = 16;
    /** A pause longer than this is the clock's jump rather than a pause, s. */
    private static final double LONGEST_PAUSE = 24 * 3600;
    /** Steps ahead up to these are taken as they come. */
    private static final double SLIP_INTERVALS = 10;

    private static final double SHORTEST_SLIP = 0.05;
    private static final double SLIP_AT_START = 1;

    private final String file;
    private final TablePlan plan;
    private final List<Finding> findings;
    private final ClockReader clock;
    private final SensorStream.Builder builder = new SensorStream.Builder();

    private final double[] heldTime = new double[NEW_CLOCK];
    private final long[] heldLine = new long[NEW_CLOCK];
    private final double[][] held = new double[NEW_CLOCK][6];
    private int holding;

    private long good;
    private long bad;
    private long repeated;
    private long firstRepeatedLine;
    private double firstRepeated;
    private double offset;
    private double first;
    private double last;
    private long lastLine;
    private String firstReason = "";
    private long firstBadLine;
    private long lastBadLine;

    SampleCollector(String file, TablePlan plan, List<Finding> findings) {
        this.file = file;
        this.plan = plan;
        this.findings = findings;
        this.clock = new ClockReader(plan.time());
    }

    /** Takes a good row. */
    void add(Row row, long line) {
        double time = clock.seconds(row, good + bad + holding) + offset;
        if (good == 0) {
            first = time;
        } else if (time < last || time - last > suspicious()) {
            outOfOrder(row, time, line);
            return;
        } else if (holding > 0) {
            releaseAsBad();
        }
        accept(time, row.values, line);
    }

    /** Takes account of a row that could not be read; the reason is asked for only if the row is named. */
    void refuse(long line, Supplier<String> reason) {
        bad++;
        lastBadLine = line;
        if (bad <= NAMED) {
            String why = reason.get();
            if (bad == 1) {
                firstReason = why;
                firstBadLine = line;
            }
            findings.add(new Finding(
                    FindingCode.REFUSED_ROWS,
                    Severity.WARNING,
                    WORDS.say("left.out", String.valueOf(line), file, why),
                    null,
                    moment()));
        }
        if (good == 0 && bad >= HOPELESS) {
            throw noneGood();
        }
        if (bad >= MOSTLY_BAD && bad > good) {
            throw tooManyBad();
        }
    }

    /** Takes account of a last row that breaks off; it is no bad row. */
    void halfWritten(long line) {
        findings.add(new Finding(
                FindingCode.CUT_SHORT,
                Severity.NOTE,
                WORDS.say("breaks.off", file, String.valueOf(line)),
                null,
                moment()));
    }

    /** Takes account of a file whose end is missing. */
    void damaged(String damage, long line) {
        findings.add(new Finding(
                FindingCode.CUT_SHORT,
                Severity.WARNING,
                WORDS.say("damaged", file, String.valueOf(line), damage),
                null,
                moment()));
    }

    /** A refusal of a file that goes on and on without a row. */
    UnusableInputException nothingFor(long lines, long line) {
        return new UnusableInputException(WORDS.say("nothing.for", file, String.valueOf(lines), String.valueOf(line)));
    }

    /**
     * The finished stream.
     *
     * @throws UnusableInputException if too little or too much broken was read
     */
    SensorStream finish() {
        if (holding > 1 && pause()) {
            acceptHeld();
        } else if (holding > 0) {
            releaseAsBad();
        }
        if (good == 0) {
            throw noneGood();
        }
        if (bad > BAD_ROWS_ALLOWED && bad * 100 > good + bad) {
            throw tooManyBad();
        }
        if (good > 1 && last == first) {
            throw new UnusableInputException(WORDS.say("time.still", file, String.valueOf(good)));
        }
        double interval = good > 1 ? (last - first) / (good - 1) : 0;
        if (last - first + interval < 1 - 1e-6) {
            throw new UnusableInputException(WORDS.say("time.short", file, good, Digits.fixed(last - first, 2)));
        }
        summarise();
        plan.acceleration().range().ifPresent(builder::accelerationRange);
        plan.turnRate().range().ifPresent(builder::turnRateRange);
        return builder.findClipping().build();
    }

    private void summarise() {
        if (bad > NAMED) {
            findings.add(new Finding(
                    FindingCode.REFUSED_ROWS,
                    Severity.WARNING,
                    WORDS.say(
                            "left.out.more",
                            bad - NAMED,
                            file,
                            String.valueOf(lastBadLine),
                            String.valueOf(bad),
                            String.valueOf(good + bad)),
                    null,
                    null));
        }
        if (repeated > 0) {
            findings.add(new Finding(
                    FindingCode.REPEATED_TIME,
                    Severity.WARNING,
                    WORDS.say("time.repeated", repeated, file, String.valueOf(firstRepeatedLine)),
                    null,
                    firstRepeated));
        }
    }

    private void accept(double time, double[] values, long line) {
        ColumnGroup a = plan.acceleration();
        ColumnGroup g = plan.turnRate();
        if (good > 0 && time == last) {
            repeated++;
            if (repeated == 1) {
                firstRepeated = time - first;
                firstRepeatedLine = line;
            }
        }
        builder.add(
                time,
                values[0] * a.toSi(),
                values[1] * a.toSi(),
                values[2] * a.toSi(),
                values[3] * g.toSi(),
                values[4] * g.toSi(),
                values[5] * g.toSi());
        last = time;
        lastLine = line;
        good++;
    }

    /** A step longer than this may be a slip of one row, so the rows behind it decide, s. */
    private double suspicious() {
        return good > NEW_CLOCK ? Math.max(SHORTEST_SLIP, SLIP_INTERVALS * (last - first) / (good - 1)) : SLIP_AT_START;
    }

    /** A row behind the last one, or far ahead of it. */
    private void outOfOrder(Row row, double time, long line) {
        double lastHeld = holding > 0 ? heldTime[holding - 1] : Double.NaN;
        if (holding > 0 && !(time >= lastHeld && time - lastHeld < LONGEST_PAUSE)) {
            releaseAsBad();
        }
        heldTime[holding] = time;
        heldLine[holding] = line;
        System.arraycopy(row.values, 0, held[holding], 0, 6);
        holding++;
        if (holding == NEW_CLOCK) {
            continueFromNewClock();
        }
    }

    private boolean pause() {
        return heldTime[0] > last && heldTime[0] - last <= LONGEST_PAUSE;
    }

    /** The rows held back were right: a pause lies before them. */
    private void acceptHeld() {
        int n = holding;
        holding = 0;
        for (int i = 0; i < n; i++) {
            accept(heldTime[i], held[i], heldLine[i]);
        }
    }

    private void continueFromNewClock() {
        if (pause()) {
            acceptHeld();
            return;
        }
        double interval = good > 1 ? (last - first) / (good - 1) : (heldTime[NEW_CLOCK - 1] - heldTime[0]) / NEW_CLOCK;
        double shift = last + interval - heldTime[0];
        findings.add(new Finding(
                shift > 0 ? FindingCode.BACKWARD_TIME : FindingCode.GAP,
                Severity.WARNING,
                WORDS.say(
                        "time.jumps",
                        file,
                        shift > 0 ? "back" : "ahead",
                        Digits.fixed(Math.abs(heldTime[0] - last), 3),
                        String.valueOf(heldLine[0])),
                null,
                last - first));
        offset += shift;
        int n = holding;
        holding = 0;
        for (int i = 0; i < n; i++) {
            accept(heldTime[i] + shift, held[i], heldLine[i]);
        }
    }

    private void releaseAsBad() {
        int n = holding;
        holding = 0;
        for (int i = 0; i < n; i++) {
            double step = heldTime[i] - last;
            boolean back = step < 0;
            long before = lastLine;
            if (back) {
                findings.add(new Finding(
                        FindingCode.BACKWARD_TIME,
                        Severity.WARNING,
                        WORDS.say(
                                "time.back",
                                String.format(Locale.ROOT, "%.6g", -step),
                                String.valueOf(heldLine[i]),
                                file),
                        null,
                        last - first));
            }
            refuse(
                    heldLine[i],
                    () -> back
                            ? WORDS.say("bad.time.before", String.valueOf(before))
                            : WORDS.say("bad.time.after", String.format(Locale.ROOT, "%.6g", step)));
        }
    }

    private UnusableInputException tooManyBad() {
        return new UnusableInputException(WORDS.say(
                "rows.bad",
                file,
                String.valueOf(bad),
                String.valueOf(good + bad),
                Digits.fixed(100.0 * bad / (good + bad), 1),
                String.valueOf(firstBadLine),
                firstReason));
    }

    private UnusableInputException noneGood() {
        if (bad == 0) {
            return new UnusableInputException(
                    plan.sensorColumn() >= 0
                            ? WORDS.say("rows.sensor", file, plan.sensor())
                            : WORDS.say("rows.incomplete", file));
        }
        return new UnusableInputException(
                WORDS.say("rows.unusable", file, String.valueOf(bad), String.valueOf(firstBadLine), firstReason));
    }

    private double moment() {
        return good == 0 ? 0 : last - first;
    }
}

package evenfall.ingest.table;

import evenfall.ingest.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Reads a row the careful way: cells first (RFC 4180 quoting), then each cell, with a reason for what cannot be used.
 */
final class RowText {

    private static final Words WORDS = Words.beside(RowText.class);

    /** The keys of what the columns of a sensor hold, x, y and z. */
    private static final String[] ACCELERATIONS = {
        "value.accelerometer.x", "value.accelerometer.y", "value.accelerometer.z"
    };

    private static final String[] TURN_RATES = {"value.gyroscope.x", "value.gyroscope.y", "value.gyroscope.z"};

    private final TablePlan plan;
    private final NumberScanner numbers;
    private final IsoTime isoTime = new IsoTime();
    private final List<String> cells = new ArrayList<>();
    private RowReader.Outcome outcome = RowReader.Outcome.SKIPPED;
    private Supplier<String> reason = RowText::none;
    private int innerLines;

    RowText(TablePlan plan) {
        this.plan = plan;
        this.numbers = new NumberScanner(plan.decimal());
    }

    RowReader.Outcome outcome() {
        return outcome;
    }

    /** Why the row is bad, put into words when asked since most bad rows are only counted; empty if it is not. */
    Supplier<String> reason() {
        return reason;
    }

    /** Line ends inside quoted cells of the last row. */
    int innerLines() {
        return innerLines;
    }

    /**
     * Reads one row.
     *
     * @return where its line ends; {@code limit} if it does not end before
     */
    int read(byte[] bytes, int start, int limit, Row into) {
        reason = RowText::none;
        outcome = RowReader.Outcome.SKIPPED;
        innerLines = 0;
        int lineEnd = Cells.lineEnd(bytes, start, limit);
        if (Cells.blankOrComment(bytes, start, lineEnd)) {
            outcome = RowReader.Outcome.SKIPPED;
            return lineEnd;
        }
        int end = Cells.split(bytes, start, limit, plan.separator(), cells);
        if (end > lineEnd) {
            // A cell holds a line end, or a quotation mark was lost.
            evaluate(into);
            if (outcome != RowReader.Outcome.BAD) {
                for (int i = start; i < end; i++) {
                    if (bytes[i] == '\n' || (bytes[i] == '\r' && bytes[i + 1] != '\n')) {
                        innerLines++;
                    }
                }
                return end;
            }
            end = -1;
        }
        if (end < 0) {
            bad(() -> WORDS.say("bad.quote"));
            return lineEnd;
        }
        evaluate(into);
        return end;
    }

    private void evaluate(Row into) {
        int count = cells.size();
        while (count > plan.cells() && cells.get(count - 1).isBlank()) {
            count--;
        }
        if (plan.cells() > 0 && count != plan.cells()) {
            int found = count;
            bad(() -> WORDS.say("bad.cells", found, plan.cells()));
            return;
        }
        if (plan.sensorColumn() >= 0 && !cells.get(plan.sensorColumn()).strip().equals(plan.sensor())) {
            outcome = RowReader.Outcome.SKIPPED;
            return;
        }
        outcome = RowReader.Outcome.ROW;
        if (plan.time().column() >= 0) {
            time(cells.get(plan.time().column()), into);
        }
        for (int c = 0; c < 3 && outcome == RowReader.Outcome.ROW; c++) {
            into.values[c] = value(plan.acceleration(), ACCELERATIONS[c], c, Absurd.ACCELERATION);
            into.values[3 + c] = value(plan.turnRate(), TURN_RATES[c], c, Absurd.TURN_RATE);
        }
    }

    private void time(String cell, Row into) {
        if (plan.time().unit() == Unit.ISO_8601) {
            byte[] bytes = (cell + '\n').getBytes(StandardCharsets.UTF_8);
            int end = isoTime.scan(bytes, 0);
            if (end == bytes.length - 1) {
                into.nanos = isoTime.nanos();
            } else {
                bad(() -> cell.isBlank() ? WORDS.say("bad.time.missing") : WORDS.say("bad.time", shown(cell)));
            }
        } else {
            into.time = number(cell, "value.time");
        }
    }

    private double value(ColumnGroup group, String what, int axis, double largest) {
        if (outcome != RowReader.Outcome.ROW) {
            return 0;
        }
        double value = number(cells.get(group.columns().get(axis)), what);
        if (!(Math.abs(value * group.toSi()) <= largest)) {
            bad(() -> WORDS.say("bad.large", WORDS.say(what), String.valueOf(value)));
        }
        return value;
    }

    private double number(String cell, String what) {
        // A spreadsheet pads with spaces that do not break.
        String text = cell.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
        if (plan.separator() != ';' && text.endsWith(";")) {
            text = text.substring(0, text.length() - 1).strip();
        }
        if (text.isEmpty()
                || text.equalsIgnoreCase("nan")
                || text.equalsIgnoreCase("na")
                || text.equalsIgnoreCase("null")
                || text.equals("-")) {
            bad(() -> WORDS.say("bad.missing", WORDS.say(what)));
            return 0;
        }
        String given = text;
        byte[] bytes = (text.replace('−', '-') + '\n').getBytes(StandardCharsets.UTF_8);
        int end = numbers.scan(bytes, 0);
        if (end != bytes.length - 1) {
            bad(() -> WORDS.say("bad.number", WORDS.say(what), shown(given)));
            return 0;
        }
        return numbers.value();
    }

    private static String shown(String text) {
        StringBuilder shown = new StringBuilder("\"");
        for (int i = 0; i < Math.min(24, text.length()); i++) {
            char c = text.charAt(i);
            shown.append(Character.isISOControl(c) ? '?' : c);
        }
        return shown.append(text.length() > 24 ? "...\"" : "\"").toString();
    }

    private void bad(Supplier<String> why) {
        if (outcome != RowReader.Outcome.BAD) {
            outcome = RowReader.Outcome.BAD;
            reason = why;
        }
    }

    private static String none() {
        return "";
    }
}

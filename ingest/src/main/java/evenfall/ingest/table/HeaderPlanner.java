package evenfall.ingest.table;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Finds out from its header how a table is read. */
final class HeaderPlanner {

    private static final Words WORDS = Words.beside(HeaderPlanner.class);

    private static final char[] SEPARATORS = {',', ';', '\t'};
    /** Tried where no other makes a header. */
    private static final char[] RARE_SEPARATORS = {'|', ' '};
    /** A header stands among the first lines; before it may come what the recorder says of itself. */
    private static final int HEADER_AMONG = 100;
    /** Rates between which the unit of a bare time can be told by itself, Hz: each unit gives another thousandfold. */
    private static final double SLOWEST = 40;

    private static final double FASTEST = 2000;

    private final Preview preview;
    private final List<Finding> findings;

    HeaderPlanner(Preview preview, List<Finding> findings) {
        this.preview = preview;
        this.findings = findings;
    }

    /** Where the header stands and what it names. */
    private record Header(int line, char separator, HeaderColumns columns) {

        boolean complete() {
            return columns.has(Quantity.ACCELERATION) && columns.has(Quantity.TURN_RATE);
        }
    }

    /**
     * Makes the plan.
     *
     * @throws UnusableInputException if the header does not say enough
     */
    TablePlan plan() {
        Header header = header();
        HeaderColumns columns = header.columns();
        int headerLines = header.line() + 1;
        char separator = header.separator();
        List<String> unitRow = unitRow(headerLines, separator);
        if (unitRow != null) {
            columns = withUnits(columns, unitRow);
            headerLines++;
        }
        columns.refuseTwins();
        List<Integer> acceleration = columns.sensor(Quantity.ACCELERATION);
        List<Integer> turnRate = columns.sensor(Quantity.TURN_RATE);
        List<List<String>> rows = preview.rows(headerLines, separator);
        if (rows.isEmpty()) {
            throw new UnusableInputException(WORDS.say("rows.none", preview.name()));
        }
        int cells = RowShape.cells(rows);
        int named = columns.names().size();
        while (named > 0 && columns.names().get(named - 1).text().isEmpty()) {
            named--;
        }
        refuseShifted(rows, cells, named);
        List<Integer> numeric = new ArrayList<>(acceleration);
        numeric.addAll(turnRate);
        columns.times().stream()
                .filter(column -> !RowShape.isoTimes(rows, column))
                .forEach(numeric::add);
        byte decimal = (byte) (RowShape.decimalComma(rows, numeric) ? ',' : '.');
        TimeForm time = time(columns, rows, decimal);
        TablePlan plan = new TablePlan(
                (byte) separator,
                decimal,
                headerLines,
                cells,
                time,
                group(columns, acceleration),
                group(columns, turnRate),
                null,
                -1,
                "");
        if (plan.lastColumn() >= cells) {
            throw new UnusableInputException(WORDS.say("rows.cells", preview.name(), named, cells));
        }
        return plan;
    }

    private static ColumnGroup group(HeaderColumns columns, List<Integer> xyz) {
        Unit unit = columns.unit(xyz.toArray(Integer[]::new));
        return new ColumnGroup(xyz, unit == null ? 1 : unit.toSi(), OptionalDouble.empty());
    }

    private Header header() {
        Header usual = header(SEPARATORS);
        Header header = usual != null && usual.complete() ? usual : header(RARE_SEPARATORS);
        if (header != null && header.complete()) {
            return header;
        }
        if (usual != null && usual.columns().known() > 0) {
            return usual;
        }
        if (preview.nothingAfter(0)) {
            throw new UnusableInputException(WORDS.say("rows.blank", preview.name()));
        }
        throw new UnusableInputException(WORDS.say("header.missing", preview.name()));
    }

    /** The first complete header, else the one that names most; null if no line could be one. */
    private @Nullable Header header(char[] separators) {
        Header best = null;
        for (int i = 0; i < Math.min(HEADER_AMONG, preview.lines().size()); i++) {
            String line = preview.lines().get(i).strip();
            String content = line.replaceFirst("^(#|%|//)+\\s*", "");
            for (char separator : separators) {
                List<String> cells = Preview.split(content, separator);
                if (cells.size() < 2 || cells.stream().anyMatch(RowShape::isNumber)) {
                    continue;
                }
                Header here = new Header(i, separator, new HeaderColumns(preview.name(), cells));
                if (here.complete()) {
                    return here;
                }
                if (best == null || here.columns().known() > best.columns().known()) {
                    best = here;
                }
            }
        }
        return best;
    }

    /** The cells of a line of units below the header, or null if there is none. */
    private @Nullable List<String> unitRow(int line, char separator) {
        if (line >= preview.lines().size()
                || Preview.isBlankOrComment(preview.lines().get(line))) {
            return null;
        }
        List<String> cells = Preview.split(preview.lines().get(line), separator);
        long units = cells.stream()
                .filter(cell -> Unit.parse(strip(cell)).isPresent())
                .count();
        return units >= 3 && cells.stream().noneMatch(RowShape::isNumber) ? cells : null;
    }

    private HeaderColumns withUnits(HeaderColumns columns, List<String> units) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < columns.names().size(); i++) {
            String text = columns.names().get(i).text();
            String unit = i < units.size() ? strip(units.get(i)) : "";
            texts.add(unit.isEmpty() ? text : text + " (" + unit + ")");
        }
        return new HeaderColumns(preview.name(), texts);
    }

    private static String strip(String unit) {
        return unit.strip().replaceAll("^[(\\[{]|[)\\]}]$", "");
    }

    /** A row with more filled cells than names cannot be laid against them. */
    private void refuseShifted(List<List<String>> rows, int cells, int named) {
        if (cells <= named) {
            return;
        }
        long filled = rows.stream()
                .filter(row -> row.size() > named
                        && row.subList(named, row.size()).stream().anyMatch(cell -> !cell.isBlank()))
                .count();
        if (filled * 2 > rows.size()) {
            throw new UnusableInputException(WORDS.say("rows.names", preview.name(), named, cells));
        }
    }

    private TimeForm time(HeaderColumns columns, List<List<String>> rows, byte decimal) {
        int counter = -1;
        int bare = -1;
        for (int column : columns.times()) {
            Unit unit = columns.names().get(column).unit();
            if (RowShape.isoTimes(rows, column)) {
                return new TimeForm(column, Unit.ISO_8601, 1, 0);
            }
            if (unit == Unit.SAMPLES) {
                counter = counter < 0 ? column : counter;
            } else if (unit == null || unit == Unit.ISO_8601) {
                bare = bare < 0 ? column : bare;
            } else {
                return new TimeForm(column, unit, unit.toSi(), 0);
            }
        }
        if (bare >= 0) {
            return bareTime(columns.names().get(bare).text(), bare, rows, decimal);
        }
        if (counter >= 0) {
            throw new UnusableInputException(WORDS.say(
                    "time.counter", preview.name(), columns.names().get(counter).text(), String.valueOf(counter)));
        }
        throw new UnusableInputException(WORDS.say("time.none", preview.name(), columns.shown()));
    }

    /** A time without a unit: only one unit gives a rate that such a sensor can have. */
    private TimeForm bareTime(String name, int column, List<List<String>> rows, byte decimal) {
        NumberScanner numbers = new NumberScanner(decimal);
        List<Double> steps = new ArrayList<>();
        double last = Double.NaN;
        for (List<String> row : rows) {
            byte[] bytes = ((column < row.size() ? row.get(column).strip() : "") + '\n')
                    .getBytes(java.nio.charset.StandardCharsets.UTF_8);
            if (numbers.scan(bytes, 0) == bytes.length - 1) {
                if (numbers.value() > last) {
                    steps.add(numbers.value() - last);
                }
                last = numbers.value();
            }
        }
        double[] sorted =
                steps.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double step = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
        for (Unit unit : Arrays.asList(Unit.SECOND, Unit.MILLISECOND, Unit.MICROSECOND, Unit.NANOSECOND)) {
            double rate = 1 / (step * unit.toSi());
            // A step of exactly one may as well be a counter.
            if (step != 1 && rate >= SLOWEST && rate <= FASTEST) {
                String word = unit.name().toLowerCase(Locale.ROOT) + "s";
                findings.add(new Finding(
                        FindingCode.UNITS,
                        Severity.NOTE,
                        WORDS.say("time.guessed", preview.name(), name, word, String.valueOf(Math.round(rate))),
                        null,
                        null));
                return new TimeForm(column, unit, unit.toSi(), 0);
            }
        }
        if (sorted.length == 0 && column < rows.get(0).size()) {
            throw new UnusableInputException(WORDS.say(
                    "time.odd", preview.name(), name, rows.get(0).get(column).strip()));
        }
        throw new UnusableInputException(WORDS.say("time.unit", preview.name(), name));
    }
}

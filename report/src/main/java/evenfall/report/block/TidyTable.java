package evenfall.report.block;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Side;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.csv.CsvRow;
import evenfall.report.csv.CsvTable;
import evenfall.report.form.Form;
import evenfall.report.log.LandingNote;
import evenfall.report.log.NotesTable;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureKind;
import evenfall.report.measure.MeasureList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a tidy table of one athlete's landings: {@code date,landing,side,height_m,leave_out,form} and any measures by
 * the names the table of landings gives them. Columns of other names are passed over, and so are rows whose {@code kind}
 * says that they are no landings.
 */
public final class TidyTable {

    private static final Words WORDS = Words.beside(TidyTable.class);

    private static final Set<String> MISSING = Set.of("nan", "na", "null", "-");

    private final CsvTable table;
    private final Map<String, Measure> measures = new LinkedHashMap<>();

    private TidyTable(CsvTable table) {
        this.table = table;
        for (String name : table.names()) {
            MeasureList.named(name.strip())
                    .filter(measure -> measure.kind() != MeasureKind.SIGMA)
                    .ifPresent(measure -> measures.put(name, measure));
        }
    }

    /**
     * The landings of a table.
     *
     * @param source what to call the table in a sentence
     * @throws UnusableInputException if it has no column {@code date}, or a cell cannot be understood; names the line
     */
    public static List<BlockLanding> read(String source, String text) {
        TidyTable tidy = new TidyTable(CsvTable.read(source, text));
        if (!tidy.table.has("date")) {
            throw new UnusableInputException(WORDS.say("table.dates", source));
        }
        List<BlockLanding> landings = new ArrayList<>();
        for (CsvRow row : tidy.table.rows()) {
            Optional<String> kind = tidy.table.cell(row, "kind");
            if (kind.isEmpty() || kind.get().equals(EventKind.LANDING.code())) {
                landings.add(tidy.landing(row, landings.size() + 1));
            }
        }
        return landings;
    }

    private BlockLanding landing(CsvRow row, int position) {
        String dateText = table.cell(row, "date").orElse("");
        SessionDate date = SessionDate.parse(dateText)
                .orElseThrow(() -> refused(row, "date", dateText, WORDS.say("table.cell.date")));
        Optional<String> number = table.cell(row, "landing").or(() -> table.cell(row, "index"));
        Double index = number.isPresent() ? number(row, "landing", number.get()) : Double.valueOf(position);
        Map<String, Double> values = new LinkedHashMap<>();
        for (Map.Entry<String, Measure> column : measures.entrySet()) {
            Optional<String> cell = table.cell(row, column.getKey());
            Double value = cell.isPresent() ? number(row, column.getKey(), cell.get()) : null;
            if (value != null) {
                values.put(column.getValue().name(), value);
            }
        }
        return new BlockLanding(
                date,
                index == null ? position : (int) Math.round(index),
                index == null ? position : (int) Math.round(index),
                side(row),
                false,
                table.cell(row, "height_m")
                        .map(cell -> number(row, "height_m", cell))
                        .orElse(null),
                LandingNote.leavesOut(table.cell(row, "leave_out").orElse(null)),
                form(row),
                values,
                BlockLanding.cutOff(
                        says(row, "clipped", "true"), says(row, "flags", LandingFlag.CLIPPED_UPPER_BACK.code())));
    }

    /** Whether a cell of blank-separated words has one of them. */
    private boolean says(CsvRow row, String column, String word) {
        return table.cell(row, column)
                .map(cell -> Arrays.asList(cell.toLowerCase(Locale.ROOT).split("\\s+", -1))
                        .contains(word))
                .orElse(false);
    }

    private @Nullable Side side(CsvRow row) {
        Optional<String> cell = table.cell(row, "side");
        if (cell.isEmpty()) {
            return null;
        }
        return NotesTable.side(cell.get())
                .orElseThrow(() -> refused(row, "side", cell.get(), WORDS.say("table.cell.side")));
    }

    private @Nullable Form form(CsvRow row) {
        Optional<String> cell = table.cell(row, "form");
        if (cell.isEmpty()) {
            return null;
        }
        return Arrays.stream(Form.values())
                .filter(form -> form.code().equals(cell.get().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> refused(row, "form", cell.get(), WORDS.say("table.cell.form")));
    }

    private @Nullable Double number(CsvRow row, String column, String cell) {
        if (MISSING.contains(cell.toLowerCase(Locale.ROOT))) {
            return null;
        }
        try {
            double value = Double.parseDouble(cell.indexOf('.') < 0 ? cell.replace(',', '.') : cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw refused(row, column, cell, WORDS.say("table.cell.number"));
        }
        throw refused(row, column, cell, WORDS.say("table.cell.number"));
    }

    private UnusableInputException refused(CsvRow row, String column, String cell, String wanted) {
        return new UnusableInputException(
                WORDS.say("table.cell", table.source(), String.valueOf(row.line()), cell, column, wanted));
    }
}

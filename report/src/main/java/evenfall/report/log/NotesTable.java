package evenfall.report.log;

import evenfall.fusion.landing.Side;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.csv.CsvRow;
import evenfall.report.csv.CsvTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads notes from a table {@code landing,side,height_m,surface,shoes,leave_out,remark}; only the first is needed. A further
 * column {@code baseline} says which landings the coach approves as part of what is usual for the athlete.
 */
public final class NotesTable {

    private static final Words WORDS = Words.beside(NotesTable.class);

    /** The highest drop that is believed, m: higher is a slip of the keyboard (centimetres, most often). */
    public static final double HIGHEST_M = 10;

    private static final List<String> COLUMNS =
            List.of("landing", "side", "height_m", "surface", "shoes", "leave_out", "remark", "baseline");

    private NotesTable() {}

    /** A sentence on each column of which nothing is taken, for a slip in a name must not lose what stands below it. */
    static List<String> unknownColumns(CsvTable table) {
        return table.names().stream()
                .filter(name -> !COLUMNS.contains(name))
                .map(name -> WORDS.say("note.column.unknown", table.source(), name, String.join(", ", COLUMNS)))
                .toList();
    }

    /**
     * The notes of a table, one for each row that says anything.
     *
     * @param source what to call the table in a sentence
     * @throws UnusableInputException if a cell cannot be understood; names the line
     */
    public static List<RangeNote> read(String source, String text) {
        return read(CsvTable.read(source, text));
    }

    static List<RangeNote> read(CsvTable table) {
        if (!table.has("landing")) {
            throw new UnusableInputException(WORDS.say("note.columns", table.source()));
        }
        List<RangeNote> notes = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            String where = WORDS.say("note.line", table.source(), row.line());
            int landing = landing(where, table.cell(row, "landing").orElse(""));
            LandingNote note = new LandingNote(
                    table.cell(row, "side").map(cell -> side(where, cell)).orElse(null),
                    table.cell(row, "height_m").map(cell -> height(where, cell)).orElse(null),
                    table.cell(row, "surface").orElse(null),
                    table.cell(row, "shoes").orElse(null),
                    table.cell(row, "leave_out").orElse(null),
                    table.cell(row, "remark").orElse(null));
            notes.add(new RangeNote(landing, landing, note));
        }
        return notes;
    }

    /**
     * What the column {@code baseline} of a table says, one for each row where it says yes or no.
     *
     * @throws UnusableInputException if a cell cannot be understood; names the line
     */
    static List<ApprovalEntry.Approval> approvals(CsvTable table) {
        List<ApprovalEntry.Approval> approvals = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            String where = WORDS.say("note.line", table.source(), row.line());
            Optional<String> cell = table.cell(row, "baseline");
            if (cell.isPresent()) {
                int landing = landing(where, table.cell(row, "landing").orElse(""));
                boolean approved = yesOrNo(cell.get())
                        .orElseThrow(() -> new UnusableInputException(WORDS.say("note.baseline", where, cell.get())));
                approvals.add(new ApprovalEntry.Approval(landing, landing, approved));
            }
        }
        return approvals;
    }

    /** Reads yes or no (also true or false, 1 or 0), in any case; empty for anything else. */
    public static Optional<Boolean> yesOrNo(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true", "1" -> Optional.of(true);
            case "no", "false", "0" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    /** Reads left, right or both, in any case; empty for anything else. */
    public static Optional<Side> side(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(Side.values())
                .filter(side -> side.code().equals(plain))
                .findFirst();
    }

    private static int landing(String where, String cell) {
        if (cell.matches("[1-9]\\d{0,4}")) {
            return Integer.parseInt(cell);
        }
        throw new UnusableInputException(WORDS.say("note.landing", where, cell));
    }

    private static @Nullable Side side(String where, String cell) {
        return side(cell).orElseThrow(() -> new UnusableInputException(WORDS.say("note.side", where, cell)));
    }

    private static Double height(String where, String cell) {
        if (cell.matches("\\d{1,3}([.,]\\d{1,6})?")) {
            double height = Double.parseDouble(cell.replace(',', '.'));
            if (height <= HIGHEST_M) {
                return height;
            }
        }
        throw new UnusableInputException(WORDS.say("note.height", where, cell));
    }
}

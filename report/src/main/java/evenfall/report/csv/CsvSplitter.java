package evenfall.report.csv;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Splits text into rows and cells; the first line that is no comment decides the separator. */
final class CsvSplitter {

    private static final Words WORDS = Words.beside(CsvSplitter.class);

    private final String source;
    private final String text;

    CsvSplitter(String source, String text) {
        this.source = source;
        this.text = text;
    }

    /**
     * All rows that are neither blank nor a comment.
     *
     * @throws UnusableInputException if a quote never ends
     */
    List<CsvRow> rows() {
        List<CsvRow> rows = new ArrayList<>();
        long line = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator())
                .commentStrategy(CommentStrategy.SKIP)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            for (CsvRecord row : reader) {
                line = row.getStartingLineNumber();
                if (!row.getFields().stream().allMatch(String::isBlank)) {
                    rows.add(new CsvRow((int) line, row.getFields()));
                }
            }
        } catch (CsvParseException e) {
            throw new UnusableInputException(WORDS.say("quote.open", source, line), e);
        } catch (IOException e) {
            throw new UncheckedIOException("closing a reader of text in memory", e);
        }
        return rows;
    }

    private char separator() {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        for (char candidate : new char[] {'\t', ';'}) {
            if (header.indexOf(candidate) >= 0) {
                return candidate;
            }
        }
        return ',';
    }
}

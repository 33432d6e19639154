package evenfall.report.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CsvTableTest {

    @Test
    void cells_areFoundByName_withoutCaseAndBlanks() {
        CsvTable table = CsvTable.read("notes.csv", "\uFEFFLanding , Side\r\n1, left\r\n\r\n# a comment\r\n2,\r\n");

        assertThat(table.rows()).hasSize(2);
        assertThat(table.cell(table.rows().get(0), "landing")).contains("1");
        assertThat(table.cell(table.rows().get(0), "SIDE")).contains("left");
        assertThat(table.cell(table.rows().get(1), "side")).isEmpty();
        assertThat(table.cell(table.rows().get(1), "shoes")).isEmpty();
        assertThat(table.rows().get(1).line()).isEqualTo(5);
    }

    @Test
    void semicolonsAndTabs_separateWhereTheHeaderShowsThem() {
        assertThat(CsvTable.read("a", "x;y\n1,5;2\n").rows().get(0).cells()).containsExactly("1,5", "2");
        assertThat(CsvTable.read("a", "x\ty\r1\t2\r").rows().get(0).cells()).containsExactly("1", "2");
    }

    @Test
    void whatCannotBeRead_isNamedWithItsLine() {
        assertThatThrownBy(() -> CsvTable.read("a.csv", "x,y\n1,2\n3,\"4\n"))
                .isInstanceOf(UnusableInputException.class)
                .hasMessageContaining("after line 2");
        assertThatThrownBy(() -> CsvTable.read("a.csv", "x,y\n1,2,3\n")).hasMessageContaining("line 2");
        assertThatThrownBy(() -> CsvTable.read("a.csv", "x,X\n")).hasMessageContaining("twice");
        assertThatThrownBy(() -> CsvTable.read("a.csv", " \n")).hasMessageContaining("empty");
    }

    /** A general-purpose reader as second opinion on what the writer writes. */
    @Test
    void whatIsWritten_isReadBackByAnotherReaderAndByThisOne() throws IOException {
        SplittableRandom random = new SplittableRandom(20260302L);
        String alphabet = "ab ,\"\n\r;é=-";
        List<List<String>> rows = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        CsvWriter writer = new CsvWriter(text, CsvStyle.PLAIN);
        for (int r = 0; r < 200; r++) {
            List<String> row = new ArrayList<>();
            for (int c = 0; c < 4; c++) {
                StringBuilder cell = new StringBuilder("x");
                for (int k = random.nextInt(8); k > 0; k--) {
                    cell.append(alphabet.charAt(random.nextInt(alphabet.length())));
                }
                row.add(cell.toString());
                writer.text(cell.toString());
            }
            writer.end();
            rows.add(row);
        }

        List<List<String>> other = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(text.toString())) {
            reader.forEach(each -> other.add(each.getFields()));
        }
        assertThat(other).isEqualTo(rows);
        assertThat(new CsvSplitter("own", "a,b,c,d\r\n" + text)
                        .rows().stream().skip(1).map(CsvRow::cells).toList())
                .isEqualTo(rows);
    }

    @Test
    void textThatASpreadsheetWouldRun_isDisarmed() throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvWriter(text, CsvStyle.PLAIN)
                .text("=1+1")
                .text("@x")
                .text("-2")
                .number(-2.5)
                .text("a=b")
                .end();

        assertThat(text).hasToString("'=1+1,'@x,'-2,-2.5,a=b\r\n");
    }

    @Test
    void numbers_arePlainAndMissingOnesEmpty() throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvWriter(text, CsvStyle.PLAIN)
                .number(1e-7)
                .number(-0.0)
                .number(123456.7891234)
                .number(3.0)
                .number(Double.NaN)
                .number(null)
                .number(1e9)
                .end();

        assertThat(text).hasToString("0,0,123456.789123,3,,,1000000000\r\n");
    }

    /** Decimal commas go with semicolons: common practice of spreadsheets, no source; the mark is that of Unicode 23.8. */
    @Test
    void spreadsheets_getTheirDecimalsAndTheirMark() throws IOException {
        StringBuilder text = new StringBuilder();
        new CsvWriter(text, CsvStyle.SPREADSHEET_COMMA)
                .text("lean 3°, right")
                .number(-1234.5)
                .text("a;b")
                .text("=1+1")
                .end();
        assertThat(text.toString()).isEqualTo("\uFEFFlean 3°, right;-1234,5;\"a;b\";'=1+1\r\n");
        assertThat(CsvTable.read("a", "x;y;z;w\n" + text.substring(1))
                        .rows()
                        .get(0)
                        .cells())
                .containsExactly("lean 3°, right", "-1234,5", "a;b", "'=1+1");
        text.setLength(0);
        new CsvWriter(text, CsvStyle.SPREADSHEET).number(0.5).number(2.0).end();
        assertThat(text.toString()).isEqualTo("\uFEFF0.5,2\r\n");
    }
}

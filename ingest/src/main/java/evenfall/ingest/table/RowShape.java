package evenfall.ingest.table;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the first rows of a table have in common. */
final class RowShape {

    private RowShape() {}

    /** How many cells most of the rows have; 0 without rows. */
    static int cells(List<List<String>> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        int most = 0;
        for (List<String> row : rows) {
            int cells = row.size();
            if (counts.merge(cells, 1, Integer::sum) > counts.getOrDefault(most, 0)) {
                most = cells;
            }
        }
        return most;
    }

    /** Whether most numbers in these columns are written with a decimal comma. */
    static boolean decimalComma(List<List<String>> rows, List<Integer> columns) {
        int commas = 0;
        int points = 0;
        for (List<String> row : rows) {
            for (int column : columns) {
                if (column >= 0 && column < row.size()) {
                    String cell = row.get(column);
                    commas += cell.indexOf(',') >= 0 && cell.indexOf('.') < 0 ? 1 : 0;
                    points += cell.indexOf('.') >= 0 ? 1 : 0;
                }
            }
        }
        return commas > points;
    }

    /** Whether most cells of a column are ISO 8601 times. */
    static boolean isoTimes(List<List<String>> rows, int column) {
        IsoTime iso = new IsoTime();
        int good = 0;
        for (List<String> row : rows) {
            if (column < row.size()) {
                byte[] bytes = (row.get(column).strip() + '\n').getBytes(StandardCharsets.UTF_8);
                good += iso.scan(bytes, 0) == bytes.length - 1 ? 1 : 0;
            }
        }
        return good * 2 > rows.size();
    }

    /** Whether a cell is a number, with point or comma. */
    static boolean isNumber(String cell) {
        String text = cell.strip().replace(',', '.');
        byte[] bytes = (text + '\n').getBytes(StandardCharsets.UTF_8);
        return new NumberScanner((byte) '.').scan(bytes, 0) == bytes.length - 1;
    }
}

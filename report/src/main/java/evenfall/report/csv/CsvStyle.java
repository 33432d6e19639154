package evenfall.report.csv;

/** How a table is spelled. */
public enum CsvStyle {
    /** After RFC 4180, for programs: commas between cells, decimal points. */
    PLAIN(',', '.', ""),

    /** For a spreadsheet that writes 1.5: the same, and marked as UTF-8, without which some take ° for two letters. */
    SPREADSHEET(',', '.', "\uFEFF"),

    /** For a spreadsheet that writes 1,5: semicolons between cells, decimal commas, marked as UTF-8. */
    SPREADSHEET_COMMA(';', ',', "\uFEFF");

    private final char separator;
    private final char decimal;
    private final String begin;

    CsvStyle(char separator, char decimal, String begin) {
        this.separator = separator;
        this.decimal = decimal;
        this.begin = begin;
    }

    /** What stands between cells. */
    char separator() {
        return separator;
    }

    /** What stands before decimals. */
    char decimal() {
        return decimal;
    }

    /** What stands before the first cell. */
    String begin() {
        return begin;
    }
}

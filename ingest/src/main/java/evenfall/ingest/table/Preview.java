package evenfall.ingest.table;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The first lines of a file, from which its form is found out.
 *
 * @param name the file's name, for sentences
 * @param lines the lines as text, in order, blank ones too; at most some hundred kilobytes of them
 */
record Preview(String name, List<String> lines) {

    private static final Words WORDS = Words.beside(Preview.class);

    private static final int LENGTH = 1 << 17;
    private static final int MOST_LINES_OF_A_ROW = 20;

    static Preview of(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        byte[] bytes;
        boolean whole;
        try (TableSource source = TableSource.open(file, Progress.NONE)) {
            bytes = source.readNBytes(LENGTH);
            whole = bytes.length < LENGTH;
            if (bytes.length == 0) {
                throw new UnusableInputException(WORDS.say(
                        "nothing",
                        name,
                        (source.damage() == null ? "" : WORDS.say("nothing.unpacked", source.damage()))));
            }
        }
        List<String> lines = new ArrayList<>();
        int start = 0;
        while (start < bytes.length) {
            int end = Cells.lineEnd(bytes, start, bytes.length);
            if (end - start > RowReader.LONGEST_ROW && RowReader.erased(bytes, start, end) >= 0) {
                break; // what follows is for the reading of rows to judge
            }
            if (end - start > RowReader.LONGEST_ROW) {
                throw RowReader.tooLong(name, lines.size() + 1L);
            }
            if (end < bytes.length || whole) {
                lines.add(FileCheck.text(Arrays.copyOfRange(bytes, start, end)));
            }
            start = end + 1;
            if (end + 1 < bytes.length && bytes[end] == '\r' && bytes[end + 1] == '\n') {
                start++;
            }
        }
        return new Preview(name, List.copyOf(lines));
    }

    /** The rows behind {@code headerLines} lines, split into cells; blank lines and comments left out; at most 500. */
    List<List<String>> rows(int headerLines, char separator) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = headerLines; i < lines.size() && rows.size() < 500; i++) {
            if (!isBlankOrComment(lines.get(i))) {
                int last = lastLineOfRow(i);
                rows.add(split(String.join("\n", lines.subList(i, last + 1)), separator));
                i = last;
            }
        }
        return rows;
    }

    /** The line on which a row ends: further down when a cell in quotation marks holds line ends. */
    private int lastLineOfRow(int first) {
        boolean open = false;
        for (int i = first; i < Math.min(lines.size(), first + MOST_LINES_OF_A_ROW); i++) {
            String line = lines.get(i);
            for (int mark = line.indexOf('"'); mark >= 0; mark = line.indexOf('"', mark + 1)) {
                open = !open;
            }
            if (!open) {
                return i;
            }
        }
        return first;
    }

    /** Whether no line holds anything but blanks and comments from {@code headerLines} on. */
    boolean nothingAfter(int headerLines) {
        return lines.stream().skip(headerLines).allMatch(Preview::isBlankOrComment);
    }

    static boolean isBlankOrComment(String line) {
        byte[] bytes = line.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        return Cells.blankOrComment(bytes, 0, bytes.length);
    }

    /** The cells of one line. */
    static List<String> split(String line, char separator) {
        byte[] bytes = line.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        List<String> cells = new ArrayList<>();
        if (Cells.split(bytes, 0, bytes.length, (byte) separator, cells) < 0) {
            cells.clear();
            for (String cell : line.split(java.util.regex.Pattern.quote(String.valueOf(separator)), -1)) {
                cells.add(cell.strip());
            }
        }
        return cells;
    }
}

package evenfall.ingest.recorder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A file of arrival times as it is found: lines that are not whole, or not in order, are passed over, since a power cut may
 * leave anything at the end.
 *
 * @param marks what it says, in order
 */
record Arrivals(List<Mark> marks) {

    /** Nothing is known. */
    static final Arrivals UNKNOWN = new Arrivals(List.of());

    Arrivals {
        marks = List.copyOf(marks);
    }

    /**
     * One line.
     *
     * @param bytes so many bytes had come before
     * @param atS when, s since the epoch
     * @param remark what happened then, or null if a piece came
     */
    record Mark(long bytes, double atS, @Nullable Remark remark) {}

    static Arrivals read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return UNKNOWN;
        }
        List<Mark> marks = new ArrayList<>();
        byte[] text = Files.readAllBytes(file);
        // A last line without its end may be half a line.
        int whole = text.length;
        while (whole > 0 && text[whole - 1] != '\n') {
            whole--;
        }
        try (Stream<String> lines = new String(text, 0, whole, StandardCharsets.ISO_8859_1).lines()) {
            lines.skip(1)
                    .forEach(line -> mark(line).ifPresent(mark -> {
                        if (marks.isEmpty() || mark.bytes >= marks.get(marks.size() - 1).bytes) {
                            marks.add(mark);
                        }
                    }));
        }
        return new Arrivals(marks);
    }

    /** Whether the recording was ended as it should be. */
    boolean ended() {
        return !marks.isEmpty() && marks.get(marks.size() - 1).remark == Remark.END;
    }

    private static Optional<Mark> mark(String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != 3) {
            return Optional.empty();
        }
        try {
            Remark remark = null;
            for (Remark known : Remark.values()) {
                remark = cells[2].equals(known.code()) ? known : remark;
            }
            double at = OffsetDateTime.parse(cells[1]).toInstant().toEpochMilli() / 1000.0;
            return Optional.of(new Mark(Long.parseLong(cells[0]), at, remark));
        } catch (DateTimeException | NumberFormatException e) {
            return Optional.empty();
        }
    }
}

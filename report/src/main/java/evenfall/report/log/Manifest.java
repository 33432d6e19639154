package evenfall.report.log;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a session folder holds, written once beside the raw files.
 *
 * @param program name and version of the program that wrote it
 * @param date the session's date, {@code YYYY-MM-DD} or {@code YYYY-MM-DD-N}
 * @param storedAt when it was stored, ISO 8601 with offset
 * @param kind {@code tables} for imported tables, {@code wire} for what was recorded live
 * @param files the raw files
 * @param layout name of the layout file among them, or null where the tables' headers say enough
 */
public record Manifest(
        String program,
        String date,
        String storedAt,
        String kind,
        List<RawFile> files,
        @Nullable String layout) {

    /** Imported tables. */
    public static final String TABLES = "tables";

    /** Bytes of ports as they came; the files are all of the raw folder and not listed. */
    public static final String WIRE = "wire";

    public Manifest {
        files = List.copyOf(files);
    }
}

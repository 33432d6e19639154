package evenfall.report.log;

import java.util.List;

/**
 * Notes entered at one time, for single landings or ranges.
 *
 * @param writtenAt when they were written, ISO 8601 with offset
 * @param source {@code command}, or the name of the table they came from
 * @param notes the notes in the order given; a later one is laid over an earlier one
 */
public record NoteEntry(String writtenAt, String source, List<RangeNote> notes) {

    public NoteEntry {
        notes = List.copyOf(notes);
    }
}

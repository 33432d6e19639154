package evenfall.report.log;

import evenfall.report.csv.CsvTable;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * What a coach says at one time of landings of a session.
 *
 * @param source {@code command}, or the name of the table it came from
 * @param notes what is noted of them
 * @param approvals which are part of the athlete's baseline, or are not any more
 */
public record CoachNotes(String source, List<RangeNote> notes, List<ApprovalEntry.Approval> approvals) {

    public CoachNotes {
        notes = List.copyOf(notes);
        approvals = List.copyOf(approvals);
    }

    /**
     * What a table says.
     *
     * @param source what to call the table in a sentence
     * @param tell told of columns of which nothing is taken
     * @throws evenfall.ingest.recording.UnusableInputException if a cell cannot be understood; names the line
     */
    public static CoachNotes read(String source, String text, Consumer<String> tell) {
        CsvTable table = CsvTable.read(source, text);
        NotesTable.unknownColumns(table).forEach(tell);
        return new CoachNotes(source, NotesTable.read(table), NotesTable.approvals(table));
    }

    /** The highest index of a landing that anything is said of; 0 if nothing is. */
    public int lastLanding() {
        return IntStream.concat(
                        notes.stream().mapToInt(RangeNote::last),
                        approvals.stream().mapToInt(ApprovalEntry.Approval::last))
                .max()
                .orElse(0);
    }

    /** Whether it says nothing. */
    public boolean isEmpty() {
        return notes.isEmpty() && approvals.isEmpty();
    }

    /**
     * Adds it to the log; the caller holds the athlete's lock.
     *
     * @param writtenAt now, ISO 8601 with offset
     */
    public void add(AthleteFolder athlete, SessionDate date, String writtenAt) throws IOException {
        if (!notes.isEmpty()) {
            athlete.notes(date).add(new NoteEntry(writtenAt, source, notes));
        }
        if (!approvals.isEmpty()) {
            athlete.approvals(date).add(new ApprovalEntry(writtenAt, source, approvals));
        }
    }
}

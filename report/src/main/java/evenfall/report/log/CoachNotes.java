package evenfall.report.log;

import java.io.IOException;
import java.util.List;

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
     * @throws evenfall.ingest.recording.UnusableInputException if a cell cannot be understood; names the line
     */
    public static CoachNotes read(String source, String text) {
        return new CoachNotes(source, NotesTable.read(source, text), NotesTable.approvals(source, text));
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

package evenfall.report.log;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is noted of each landing once all entries are laid over one another. */
public final class Notes {

    private Notes() {}

    /** The note of each landing, by index, for those that have one. */
    public static Map<Integer, LandingNote> of(List<NoteEntry> entries) {
        Map<Integer, LandingNote> notes = new TreeMap<>();
        for (NoteEntry entry : entries) {
            for (RangeNote range : entry.notes()) {
                for (int landing = range.first(); landing <= range.last(); landing++) {
                    LandingNote earlier = notes.getOrDefault(landing, LandingNote.NONE);
                    notes.put(landing, earlier.with(range.note()));
                }
            }
        }
        return notes;
    }
}

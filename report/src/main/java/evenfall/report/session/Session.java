package evenfall.report.session;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.orientation.FilterKind;
import evenfall.report.log.DiaryEntry;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One session as tables and pages see it.
 *
 * @param athlete name or id, or null for files that are in no log
 * @param date {@code YYYY-MM-DD} or {@code YYYY-MM-DD-N}, or null for files that are in no log
 * @param sources the files it was read from, as a person would name them
 * @param analysis what the recording tells
 * @param filter the orientation filter used
 * @param landings all events in order of time
 * @param diary the diary entries of that day
 */
public record Session(
        @Nullable String athlete,
        @Nullable String date,
        List<String> sources,
        RecordingAnalysis analysis,
        FilterKind filter,
        List<SessionLanding> landings,
        List<DiaryEntry> diary) {

    public Session {
        sources = List.copyOf(sources);
        landings = List.copyOf(landings);
        diary = List.copyOf(diary);
    }
}

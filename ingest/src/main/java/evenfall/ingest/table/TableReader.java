package evenfall.ingest.table;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads the samples of one sensor from one table file. */
final class TableReader {

    /** So many lines without a row of the sensor, and the file is given up; a sensor of ten hours at 400 Hz is less. */
    private static final long MOST_PASSED_OVER = 20_000_000;

    private final @Nullable Layout layout;

    TableReader(@Nullable Layout layout) {
        this.layout = layout;
    }

    /** Reads one sensor. */
    SensorRecording read(Path file, Place place, Progress progress) throws IOException {
        Preview preview = Preview.of(file);
        List<Finding> findings = new ArrayList<>();
        TablePlan plan = layout == null
                ? new HeaderPlanner(preview, findings).plan()
                : new LayoutPlanner(preview, layout).plan(place);
        SampleCollector samples = new SampleCollector(preview.name(), plan, findings);
        try (TableSource source = TableSource.open(file, progress)) {
            RowReader rows = new RowReader(source, preview.name(), plan);
            rows.skipLines(plan.headerLines());
            collect(rows, samples, source);
            if (source.damage() != null) {
                samples.damaged(source.damage(), rows.line());
            }
        }
        SensorStream stream = samples.finish();
        return new SensorRecording(preview.name(), stream, plan.axes(), findings);
    }

    private static void collect(RowReader rows, SampleCollector samples, TableSource source) throws IOException {
        long passedOver = 0;
        while (true) {
            switch (rows.next()) {
                case ROW -> {
                    passedOver = 0;
                    samples.add(rows.row(), rows.line());
                }
                case BAD -> samples.refuse(rows.line(), rows.reason());
                case HALF_WRITTEN -> {
                    if (source.damage() == null) {
                        samples.halfWritten(rows.line());
                    }
                }
                case SKIPPED -> {
                    if (++passedOver > MOST_PASSED_OVER) {
                        throw samples.nothingFor(MOST_PASSED_OVER, rows.line());
                    }
                }
                case END -> {
                    return;
                }
            }
        }
    }
}

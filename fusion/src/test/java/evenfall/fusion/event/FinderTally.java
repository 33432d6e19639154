package evenfall.fusion.event;

import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Counts what the finder finds over recordings of one kind. */
public final class FinderTally {

    /** A landing is found if its peak lies this near to the true one, s. */
    private static final double NEAR = 0.15;

    private int files;
    private int landings;
    private int withSteps;
    private int withFalls;
    private final List<String> missed = new ArrayList<>();
    private final List<String> extra = new ArrayList<>();

    /** All waist recordings of an activity ({@code D19}) in the folder of open recordings of people. */
    public static FinderTally ofActivity(Path sisfall, String code, FilterKind filter) throws IOException {
        List<String> truth = Files.readAllLines(sisfall.resolve("landings.csv"));
        FinderTally tally = new FinderTally();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(sisfall, code + "_*.gz")) {
            for (Path file : found) {
                String trial = String.valueOf(file.getFileName()).split("\\.", 2)[0];
                List<Double> peaks = new ArrayList<>();
                for (String line : truth) {
                    String[] cells = line.split(",", -1);
                    if (cells[0].equals(trial)) {
                        peaks.add(Double.parseDouble(cells[1]));
                    }
                }
                SensorStream stream = OpenRecordings.waist(file);
                tally.add(trial, new EventFinder().find(stream, OrientationEstimator.estimate(stream, filter)), peaks);
            }
        }
        return tally;
    }

    /** Counts one recording; {@code peaks} are the true ones, s. */
    public void add(String trial, List<Event> events, List<Double> peaks) {
        files++;
        landings += peaks.size();
        withSteps += has(events, EventKind.STEPS);
        withFalls += has(events, EventKind.FALL);
        for (double peak : peaks) {
            if (events.stream().noneMatch(e -> isLandingAt(e, peak))) {
                missed.add(trial + " at " + peak);
            }
        }
        for (Event event : events) {
            if (event.kind() == EventKind.LANDING && peaks.stream().noneMatch(peak -> isLandingAt(event, peak))) {
                extra.add(trial + " at " + event.peakS());
            }
        }
    }

    private static int has(List<Event> events, EventKind kind) {
        return events.stream().anyMatch(e -> e.kind() == kind) ? 1 : 0;
    }

    private static boolean isLandingAt(Event event, double peak) {
        return event.kind() == EventKind.LANDING && Math.abs(event.peakS() - peak) < NEAR;
    }

    /** Recordings looked at. */
    public int files() {
        return files;
    }

    /** True landings in them. */
    public int landings() {
        return landings;
    }

    /** Recordings with a run of steps. */
    public int withSteps() {
        return withSteps;
    }

    /** Recordings with a fall. */
    public int withFalls() {
        return withFalls;
    }

    /** True landings that were not found. */
    public List<String> missed() {
        return missed;
    }

    /** Landings found where there is none. */
    public List<String> extra() {
        return extra;
    }
}

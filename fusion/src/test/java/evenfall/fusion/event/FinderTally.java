package evenfall.fusion.event;

import evenfall.fusion.accuracy.LivePlay;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.SignedAxis;
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

    private static final double LIVE_BLOCK_S = 0.04;
    /** How the waist sensor was worn, as the notes of those recordings say. */
    private static final BodyAxes WAIST = new BodyAxes(SignedAxis.PLUS_Z, SignedAxis.MINUS_Y);

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
                List<Double> peaks = peaks(truth, trial);
                SensorStream stream = OpenRecordings.waist(file);
                tally.add(trial, new EventFinder().find(stream, OrientationEstimator.estimate(stream, filter)), peaks);
            }
        }
        return tally;
    }

    /**
     * The same recordings played to the live analysis; the runs of steps are not told live. One trial of each person, or all.
     */
    public static FinderTally ofActivityLive(Path sisfall, String code, boolean all) throws IOException {
        List<String> truth = Files.readAllLines(sisfall.resolve("landings.csv"));
        FinderTally tally = new FinderTally();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(sisfall, code + (all ? "_*.gz" : "_*_R01*.gz"))) {
            for (Path file : found) {
                String trial = String.valueOf(file.getFileName()).split("\\.", 2)[0];
                SensorRecording pelvis = new SensorRecording(trial, OpenRecordings.waist(file), WAIST, List.of());
                LivePlay play = LivePlay.of(new Recording(pelvis, null), LIVE_BLOCK_S);
                List<Event> told = new ArrayList<>();
                for (LivePlay.Told one : play.landings()) {
                    Moments m = one.landing().moments();
                    told.add(new Event(EventKind.LANDING, 1, m.contactS(), m.contactS(), m.peakS(), m.peakS()));
                }
                for (double fall : play.falls()) {
                    told.add(new Event(EventKind.FALL, 1, fall, fall, fall, fall));
                }
                tally.add(trial, told, peaks(truth, trial));
            }
        }
        return tally;
    }

    private static List<Double> peaks(List<String> truth, String trial) {
        List<Double> peaks = new ArrayList<>();
        for (String line : truth) {
            String[] cells = line.split(",", -1);
            if (cells[0].equals(trial)) {
                peaks.add(Double.parseDouble(cells[1]));
            }
        }
        return peaks;
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

package evenfall.fusion.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.fusion.accuracy.OpenData;
import evenfall.fusion.alignment.GyroSense;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * Open recordings of people (Sucerquia, Lopez and Vargas-Bonilla 2017, Sensors 17:198) changed in a way whose effect is
 * known. The figures may only be tightened.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ChangedRecordingsTest {

    private Path folder = Path.of("");

    @BeforeAll
    void findFolder() {
        Optional<Path> found = OpenData.folder("sisfall");
        assumeTrue(found.isPresent(), OpenData.missing("sisfall"));
        folder = found.orElseThrow();
    }

    /** Half the time at the same force is a hop of half the speed; the belt of one of the people swings by up to 23°. */
    @Test
    void hops_of_half_the_speed_are_found_though_belts_swing() throws IOException {
        List<String> truth = Files.readAllLines(folder.resolve("landings.csv"));
        int found = 0;
        int others = 0;
        for (Path file : files("D19_*.gz")) {
            String trial = name(file);
            List<Double> peaks = new ArrayList<>();
            for (String line : truth) {
                String[] cells = line.split(",", -1);
                if (cells[0].equals(trial)) {
                    peaks.add(Double.parseDouble(cells[1]) / 2);
                }
            }
            SensorStream hop = hastened(OpenRecordings.waist(file), 2);
            List<Event> landings = new EventFinder()
                    .find(hop, OrientationEstimator.estimate(hop, FilterKind.TWO_PASS)).stream()
                            .filter(event -> event.kind() == EventKind.LANDING)
                            .toList();
            int right = (int) peaks.stream()
                    .filter(peak -> landings.stream().anyMatch(event -> Math.abs(event.peakS() - peak) < 0.15))
                    .count();
            found += right;
            others += landings.size() - right;
        }
        assertThat(found).isGreaterThanOrEqualTo(80);
        assertThat(others).isZero();
    }

    @Test
    void a_right_gyroscope_is_never_taken_for_mirrored_and_a_mirrored_one_mostly_told() throws IOException {
        int count = 0;
        int told = 0;
        List<String> wrong = new ArrayList<>();
        for (Path file : files("*.txt.gz")) {
            SensorStream stream = OpenRecordings.waist(file);
            if (GyroSense.find(stream, Vector3.ZERO).mirrored()) {
                wrong.add(name(file));
            }
            told += GyroSense.find(stream.withTurnRateReversed(true, true, true), Vector3.ZERO)
                            .mirrored()
                    ? 1
                    : 0;
            count++;
        }
        assertThat(count).as("recordings").isGreaterThan(200);
        assertThat(wrong).isEmpty();
        assertThat(told).as("of " + count).isGreaterThanOrEqualTo(4 * count / 5);
    }

    private List<Path> files(String glob) throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, glob)) {
            found.forEach(files::add);
        }
        return files;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName()).split("\\.", 2)[0];
    }

    /** The same angles and forces in a shorter time: turn rates grow, speeds shrink. */
    private static SensorStream hastened(SensorStream s, double factor) {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < s.size(); i++) {
            builder.add(
                    s.time(i) / factor,
                    s.ax(i),
                    s.ay(i),
                    s.az(i),
                    factor * s.gx(i),
                    factor * s.gy(i),
                    factor * s.gz(i));
        }
        return builder.build();
    }
}

package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;

/**
 * The filters on six trials with optical truth (Laidig, Caruso, Cereatti and Seel, Data 6(7):72, 2021; CC BY 4.0).
 *
 * <p>The truth leads the gyroscope by a constant 2.4 ms in this data set, so a truth row is compared with the estimate
 * 0.686 samples later. The published filter's own program reaches 0.552 deg causal and 0.306 deg offline on these trials
 * (0.684 and 0.466 as it comes). No parameter was tuned on them: the filter's are the published ones.
 */
class OpenOrientationTest {

    private static final double DELAY_SAMPLES = 0.686;
    private static final List<String> TRIALS = List.of(
            "03_undisturbed_slow_rotation_C",
            "05_undisturbed_slow_rotation_with_breaks_B",
            "08_undisturbed_fast_rotation_with_breaks_A",
            "11_undisturbed_slow_translation_B",
            "16_undisturbed_fast_translation_B",
            "24_disturbed_tapping_A");

    @Test
    void inclinationIsAsGoodAsThePublishedFiltersOwn() throws IOException {
        Path folder = folder();
        assumeTrue(Files.isDirectory(folder), "the open recordings are not here: " + folder);
        double[] live = new double[2];
        double[] twoPass = new double[2];
        double[] madgwick = new double[2];
        double[] complementary = new double[2];
        for (String trial : TRIALS) {
            SensorStream stream = stream(folder.resolve(trial + ".csv.gz"));
            List<double[]> truth = rows(folder.resolve(trial + ".truth.csv.gz"));
            addErrors(stream, FilterKind.LIVE, truth, live);
            addErrors(stream, FilterKind.TWO_PASS, truth, twoPass);
            addErrors(stream, FilterKind.MADGWICK, truth, madgwick);
            addErrors(stream, FilterKind.COMPLEMENTARY, truth, complementary);
        }
        assertThat(live[0]).isLessThan(0.554);
        assertThat(twoPass[0]).isLessThan(0.309);
        assertThat(live[1]).isLessThan(0.686);
        assertThat(twoPass[1]).isLessThan(0.468);
        // the default has to beat the plain filters clearly
        assertThat(madgwick[0]).isBetween(2 * live[0], 2.5);
        assertThat(complementary[0]).isBetween(2 * live[0], 7.0);
    }

    /** Adds a trial's share of the mean error, after the delay and as it comes. */
    private static void addErrors(SensorStream stream, FilterKind kind, List<double[]> truth, double[] means) {
        OrientationTrack track = OrientationEstimator.estimate(stream, kind);
        means[0] += error(track, truth, DELAY_SAMPLES) / TRIALS.size();
        means[1] += error(track, truth, 0) / TRIALS.size();
    }

    /** Root mean square of the inclination error over the rows that count, deg. */
    private static double error(OrientationTrack track, List<double[]> truth, double later) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i + 1 < track.size(); i++) {
            double[] row = truth.get(i);
            if (row[5] == 1 && !Double.isNaN(row[1])) {
                Quaternion estimate = track.at(i).slerp(track.at(i + 1), later);
                double e = OrientationError.of(estimate, new Quaternion(row[1], row[2], row[3], row[4]))
                        .inclinationDegrees();
                sum += e * e;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    private static Path folder() {
        String stated = System.getenv("EVENFALL_DATA");
        // tests run in their module's folder, one below the project's root
        return (stated == null ? Path.of("..", "..", "shared", "data") : Path.of(stated)).resolve("broad");
    }

    private static SensorStream stream(Path file) throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (double[] r : rows(file)) {
            builder.add(r[0], r[1], r[2], r[3], r[4], r[5], r[6]);
        }
        return builder.build();
    }

    private static List<double[]> rows(Path file) throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII))) {
            String line = reader.readLine();
            while ((line = reader.readLine()) != null) {
                String[] cells = line.split(",", -1);
                double[] row = new double[cells.length];
                for (int i = 0; i < row.length; i++) {
                    row[i] = cells[i].isEmpty() ? Double.NaN : Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        }
        return rows;
    }
}

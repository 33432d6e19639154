package evenfall.fusion.orientation;

import evenfall.fusion.accuracy.OpenData;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Six trials with optical truth (Laidig, Caruso, Cereatti and Seel, Data 6(7):72, 2021; CC BY 4.0). The truth leads the
 * gyroscope by a constant 2.4 ms in this data set, so a truth row is compared with the estimate 0.686 samples later.
 */
public final class OpenTrials {

    /** Names of the trials. */
    public static final List<String> NAMES = List.of(
            "03_undisturbed_slow_rotation_C",
            "05_undisturbed_slow_rotation_with_breaks_B",
            "08_undisturbed_fast_rotation_with_breaks_A",
            "11_undisturbed_slow_translation_B",
            "16_undisturbed_fast_translation_B",
            "24_disturbed_tapping_A");

    private static final double DELAY_SAMPLES = 0.686;

    private OpenTrials() {}

    /**
     * Root mean square of the inclination error over the rows that count, deg.
     *
     * @param delayed after the data set's own delay
     * @param asItComes row by row
     */
    public record Inclination(double delayed, double asItComes) {}

    /** A trial, read once for all filters. */
    public static final class Trial {

        private final SensorStream stream;
        private final List<double[]> truth;

        private Trial(SensorStream stream, List<double[]> truth) {
            this.stream = stream;
            this.truth = truth;
        }

        /** The trial as a gyroscope that reads no more than {@code limit} (rad/s) about any axis would have seen it. */
        public Trial clippedAt(double limit) {
            SensorStream.Builder builder = new SensorStream.Builder();
            for (int i = 0; i < stream.size(); i++) {
                double x = Math.max(-limit, Math.min(limit, stream.gx(i)));
                double y = Math.max(-limit, Math.min(limit, stream.gy(i)));
                double z = Math.max(-limit, Math.min(limit, stream.gz(i)));
                builder.add(stream.time(i), stream.ax(i), stream.ay(i), stream.az(i), x, y, z);
                if (Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z))) >= limit) {
                    builder.clipTurnRate(i);
                }
            }
            return new Trial(builder.build(), truth);
        }

        /** The error of a filter. */
        public Inclination error(FilterKind kind) {
            OrientationTrack track = OrientationEstimator.estimate(stream, kind);
            return new Inclination(error(track, DELAY_SAMPLES), error(track, 0));
        }

        private double error(OrientationTrack track, double later) {
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
    }

    /** Reads a trial from the folder of all. */
    public static Trial read(Path broad, String name) throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder();
        for (double[] r : rows(broad.resolve(name + ".csv.gz"))) {
            builder.add(r[0], r[1], r[2], r[3], r[4], r[5], r[6]);
        }
        return new Trial(builder.build(), rows(broad.resolve(name + ".truth.csv.gz")));
    }

    private static List<double[]> rows(Path file) throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader reader = OpenData.open(file)) {
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

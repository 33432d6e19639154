package evenfall.fusion.event;

import evenfall.fusion.accuracy.OpenData;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;

/** The open recordings kept beside the project, read as their notes say and apart from the product's own reader. */
final class OpenRecordings {

    private static final double G = 9.80665;
    private static final double COUNTS_PER_G = 256;
    private static final double COUNTS_PER_DEGREE = 16.384;

    private OpenRecordings() {}

    /** A waist recording of sisfall: counts without header or time, at 200 Hz. */
    static SensorStream waist(Path file) throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder();
        try (BufferedReader reader = OpenData.open(file)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.replace(";", "").trim().split("\\s*,\\s*");
                if (cells.length >= 6) {
                    add(builder, builder.size() / 200.0, cells, 0, 1 / COUNTS_PER_G, 1 / COUNTS_PER_DEGREE);
                }
            }
        }
        return builder.build();
    }

    /** A simulated pelvis: milliseconds, g, degrees a second, under one line of header. */
    static SensorStream simulated(Path file) throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder();
        try (BufferedReader reader = OpenData.open(file)) {
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",", -1);
                add(builder, Double.parseDouble(cells[0]) / 1000, cells, 1, 1, 1);
            }
        }
        return builder.build();
    }

    private static void add(
            SensorStream.Builder builder, double t, String[] cells, int first, double g, double degrees) {
        double[] v = new double[6];
        for (int c = 0; c < 6; c++) {
            double raw = Double.parseDouble(cells[first + c]);
            v[c] = c < 3 ? raw * g * G : Math.toRadians(raw * degrees);
        }
        builder.add(t, v[0], v[1], v[2], v[3], v[4], v[5]);
    }
}

package evenfall.ingest.quality;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/** Reads the three kinds of open recordings plainly, with code of its own, so that the checks do not lean on the reader. */
final class OpenRecordings {

    private static final double STANDARD_GRAVITY = 9.80665;

    private OpenRecordings() {}

    /** The folder of a data set; skips the test where it is absent. */
    static Path folder(String name) {
        String stated = System.getenv("EVENFALL_DATA");
        Path root = stated != null ? Path.of(stated) : Path.of("../../shared/data");
        Path folder = root.resolve(name);
        assumeTrue(
                Files.isDirectory(folder),
                "the open recordings are not at " + folder.toAbsolutePath().normalize());
        return folder;
    }

    static List<Path> files(String folder, String glob) throws IOException {
        try (Stream<Path> paths = Files.walk(folder(folder))) {
            return paths.filter(path -> path.getFileName().toString().matches(glob))
                    .sorted()
                    .toList();
        }
    }

    static SensorStream read(Path file) throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder().accelerationRange(16 * STANDARD_GRAVITY);
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII))) {
            boolean counts = file.toString().contains("sisfall");
            String header = counts ? "" : lines.readLine();
            boolean shown = header.startsWith("t_ms");
            double force = counts ? 0.00390625 * STANDARD_GRAVITY : shown ? STANDARD_GRAVITY : 1;
            double turn = counts ? Math.toRadians(0.06103515625) : shown ? Math.toRadians(1) : 1;
            int first = counts ? 0 : 1;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.replace(";", "").split(",", -1);
                if (cells.length < 6) {
                    continue;
                }
                double time = counts ? builder.size() / 200.0 : number(cells[0]) * (shown ? 1e-3 : 1);
                double[] value = new double[6];
                boolean clipped = false;
                for (int c = 0; c < 6; c++) {
                    value[c] = number(cells[first + c]) * (c < 3 ? force : turn);
                    clipped |= c < 3 && Math.abs(value[c]) >= 15.999 * STANDARD_GRAVITY;
                }
                if (clipped) {
                    builder.clipAcceleration(builder.size());
                }
                builder.add(time, value[0], value[1], value[2], value[3], value[4], value[5]);
            }
        }
        return builder.build();
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.strip());
    }
}

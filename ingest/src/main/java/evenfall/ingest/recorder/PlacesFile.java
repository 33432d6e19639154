package evenfall.ingest.recorder;

import evenfall.ingest.place.Place;
import evenfall.ingest.wire.SensorId;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Beside the bytes of a session: where sensors were worn that did not know it themselves, as somebody said. Lines of
 * {@code sensor,place}, such as {@code 1A2B,pelvis}; of two about the same sensor the later one holds.
 */
final class PlacesFile {

    static final String NAME = "places.csv";

    private static final String HEADER = "sensor,place";

    private PlacesFile() {}

    /** Adds a line, on the disk when this returns. */
    static void add(Path folder, int sensor, Place place) throws IOException {
        Path file = folder.resolve(NAME);
        String line = SensorId.text(sensor) + "," + place.code() + "\n";
        Files.writeString(
                file,
                Files.exists(file) ? line : HEADER + "\n" + line,
                StandardCharsets.US_ASCII,
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND,
                StandardOpenOption.SYNC);
    }

    /** What the file says, in its order; lines that cannot be read are passed over. */
    static Map<Integer, Place> read(Path folder) throws IOException {
        Map<Integer, Place> places = new LinkedHashMap<>();
        Path file = folder.resolve(NAME);
        if (!Files.exists(file)) {
            return places;
        }
        for (String line : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
                .lines()
                .toList()) {
            String[] cells = line.strip().split(",", -1);
            for (Place place : Place.values()) {
                if (cells.length == 2
                        && cells[0].matches("[0-9A-Fa-f]{4}")
                        && place.code().equals(cells[1].strip())) {
                    int sensor = Integer.parseInt(cells[0], 16);
                    places.remove(sensor);
                    places.put(sensor, place);
                }
            }
        }
        return places;
    }
}

package evenfall.fusion.analysis;

import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventKind;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** One simulated session of the open development data with its truth, read by code of its own. */
record SimulatedSession(String name, Recording recording, JsonNode truth, double pelvisStartS, double upperStartS) {

    private static final double GRAVITY = 9.80665;

    /** Where the development data lie, whether or not they are there. */
    static Path folder() {
        String stated = System.getenv("EVENFALL_DATA");
        if (stated != null) {
            return Path.of(stated, "landings");
        }
        Path here = Path.of("").toAbsolutePath();
        for (Path p = here; p != null; p = p.getParent()) {
            Path data = p.resolve("shared/data/landings");
            if (Files.isDirectory(data)) {
                return data;
            }
        }
        return here.resolve("shared/data/landings");
    }

    static SimulatedSession read(String name) {
        Path folder = folder().resolve(name);
        SensorStream pelvis = stream(folder.resolve("pelvis.csv.gz"));
        SensorStream upper = stream(folder.resolve("upper-back.csv.gz"));
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve("truth.json").toFile());
        return new SimulatedSession(
                name,
                new Recording(
                        new SensorRecording("pelvis", pelvis, null, List.of()),
                        new SensorRecording("upper back", upper, null, List.of())),
                truth,
                pelvis.clockStartS(),
                upper.clockStartS());
    }

    private static SensorStream stream(Path file) {
        SensorStream.Builder builder = new SensorStream.Builder();
        List<Integer> clipped = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII))) {
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",", -1);
                double[] v = new double[7];
                for (int c = 0; c < 7; c++) {
                    v[c] = Double.parseDouble(cells[c]);
                }
                if (Math.max(Math.abs(v[1]), Math.max(Math.abs(v[2]), Math.abs(v[3]))) > 15.99) {
                    clipped.add(builder.size());
                }
                builder.add(
                        v[0] / 1000,
                        v[1] * GRAVITY,
                        v[2] * GRAVITY,
                        v[3] * GRAVITY,
                        Math.toRadians(v[4]),
                        Math.toRadians(v[5]),
                        Math.toRadians(v[6]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        clipped.forEach(builder::clipAcceleration);
        return builder.build();
    }

    /** The landings of the truth as a finder would give them. */
    List<Event> trueEvents() {
        List<Event> events = new ArrayList<>();
        for (JsonNode landing : truth.get("landings")) {
            double contact = landing.get("t_contact_s").asDouble() - pelvisStartS;
            double takeoff = landing.get("t_takeoff_s").asDouble() - pelvisStartS;
            double peak = landing.get("peak_pelvis")
                            .get("sensor")
                            .get("t_peak_own_clock_s")
                            .asDouble()
                    - pelvisStartS;
            events.add(new Event(EventKind.LANDING, 1, takeoff - 0.3, contact + 0.02, peak, contact + 0.3));
        }
        return events;
    }
}

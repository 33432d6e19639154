package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** One simulated session of the open development data with its truth, read by code of its own. */
record SimulatedSession(
        String name, Path folder, Recording recording, JsonNode truth, double pelvisStartS, double upperStartS) {

    static final List<String> NAMES = List.of("s1", "s2", "s3", "s4", "s5", "s6", "s7", "s8", "s9");

    private static final double GRAVITY = 9.80665;

    /** Reads a session from the folder of all. */
    static SimulatedSession read(Path landings, String name) {
        Path folder = landings.resolve(name);
        SensorStream pelvis = stream(folder.resolve("pelvis.csv.gz"));
        SensorStream upper = stream(folder.resolve("upper-back.csv.gz"));
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve("truth.json").toFile());
        return new SimulatedSession(
                name,
                folder,
                new Recording(
                        new SensorRecording("pelvis", pelvis, null, List.of()),
                        new SensorRecording("upper back", upper, null, List.of())),
                truth,
                pelvis.clockStartS(),
                upper.clockStartS());
    }

    /** Reads all nine. */
    static List<SimulatedSession> all(Path landings) {
        return NAMES.parallelStream().map(name -> read(landings, name)).toList();
    }

    private static SensorStream stream(Path file) {
        SensorStream.Builder builder = new SensorStream.Builder();
        List<Integer> clipped = new ArrayList<>();
        try (BufferedReader in = OpenData.open(file)) {
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

    /** Whether time is missing in either stream. */
    boolean hasGaps() {
        SensorRecording upper = recording.upperBack();
        return !recording.pelvis().stream().gaps().isEmpty()
                || (upper != null && !upper.stream().gaps().isEmpty());
    }

    /** Whether the opening was as asked for and the straps stayed where they were. */
    boolean wellPrepared() {
        return truth.get("opening_routine").asString().equals("full")
                && truth.get("strap_slip").isNull();
    }

    List<TrueLanding> landings() {
        List<TrueLanding> all = new ArrayList<>();
        for (JsonNode landing : truth.get("landings")) {
            all.add(SimulatedTruth.landing(landing, truth.get("stance_angles_deg"), pelvisStartS));
        }
        return all;
    }

    /** The true upper-back clock, s from its first sample, at a moment of the pelvis stream. */
    double toUpperBack(double pelvisS) {
        JsonNode map = truth.get("clock_map");
        return map.get("a").asDouble() + map.get("b").asDouble() * (pelvisS + pelvisStartS) - upperStartS;
    }

    RecordingAnalysis analyse() {
        return analyse(recording);
    }

    /** As if the upper back had worn no sensor. */
    RecordingAnalysis analyseAlone() {
        return analyse(new Recording(recording.pelvis(), null));
    }

    private static RecordingAnalysis analyse(Recording of) {
        return new RecordingAnalyser(FilterKind.TWO_PASS).analyse(of, Progress.NONE);
    }

    /** Errors of an analysis of this session. */
    LandingErrors errors(RecordingAnalysis analysis) {
        LandingErrors errors = LandingErrors.of(analysis, landings());
        errors.addClock(analysis, this::toUpperBack);
        return errors;
    }
}

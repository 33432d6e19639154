package evenfall.report.motionbids;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import evenfall.report.json.PlainDocument;
import evenfall.report.log.FolderRemoval;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Writes a session as a folder of the standard, whole or not at all. */
public final class MotionFolder {

    private static final Words WORDS = Words.beside(MotionFolder.class);

    private static final String STANDARD = "1.9.0";
    private static final String TASK = "drops";

    private final Session session;
    private final Recording recording;
    private final String subject;
    private final String visit;

    private MotionFolder(Session session, Recording recording) {
        this.session = session;
        this.recording = recording;
        this.subject = label(String.valueOf(session.athlete()), "athlete");
        this.visit = label(String.valueOf(session.date()), "1");
    }

    /**
     * Writes the folder.
     *
     * @param folder a folder that is not there yet, or is empty
     * @throws UnusableInputException if there is something in it
     */
    public static void write(Session session, Recording recording, Path folder) throws IOException {
        if (Files.exists(folder)) {
            if (!Files.isDirectory(folder) || !isEmpty(folder)) {
                throw new UnusableInputException(WORDS.say("folder.taken", folder));
            }
        }
        Path absolute = folder.toAbsolutePath();
        Path temporary = absolute.resolveSibling(
                "." + absolute.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            new MotionFolder(session, recording).fill(temporary);
            Files.deleteIfExists(absolute);
            Files.move(temporary, absolute);
        } finally {
            FolderRemoval.of(temporary);
        }
    }

    private void fill(Path root) throws IOException {
        String stem = "sub-" + subject + "_ses-" + visit + "_task-" + TASK;
        Path visitFolder = root.resolve("sub-" + subject).resolve("ses-" + visit);
        Path motion = visitFolder.resolve("motion");
        Files.createDirectories(motion);
        document(root.resolve("dataset_description.json"), about());
        text(root.resolve("README"), readme());
        text(root.resolve("participants.tsv"), "participant_id\nsub-" + subject + "\n");
        StringBuilder scans = new StringBuilder(ScanTable.HEADER);
        for (Place place : recording.places()) {
            SensorRecording sensor = place == Place.PELVIS ? recording.pelvis() : recording.upperBack();
            if (sensor == null) {
                continue;
            }
            SensorStream stream = sensor.stream();
            String tracked = stem + "_tracksys-" + label(place.words(), "sensor");
            try (BufferedWriter out = Files.newBufferedWriter(motion.resolve(tracked + "_motion.tsv"))) {
                SampleTable.write(stream, out);
            }
            document(motion.resolve(tracked + "_motion.json"), sensor(place, stream));
            try (BufferedWriter out = Files.newBufferedWriter(motion.resolve(tracked + "_channels.tsv"))) {
                SampleTable.channels(place.words(), stream.rateHz(), out);
            }
            document(motion.resolve(tracked + "_channels.json"), axes());
            scans.append(ScanTable.row("motion/" + tracked + "_motion.tsv", day(), place, stream, session.analysis()));
        }
        text(visitFolder.resolve("sub-" + subject + "_ses-" + visit + "_scans.tsv"), scans.toString());
        document(root.resolve("scans.json"), ScanTable.columns());
        try (BufferedWriter out = Files.newBufferedWriter(motion.resolve(stem + "_events.tsv"))) {
            EventTable.write(session, out);
        }
        document(motion.resolve(stem + "_events.json"), EventTable.columns());
    }

    private String day() {
        String date = String.valueOf(session.date());
        return date.length() >= 10 ? date.substring(0, 10) : "1925-01-01";
    }

    private static Map<String, Object> about() {
        Map<String, Object> about = new LinkedHashMap<>();
        about.put("Name", WORDS.say("name"));
        about.put("BIDSVersion", STANDARD);
        about.put("DatasetType", "raw");
        about.put("GeneratedBy", List.of(Map.of("Name", ProgramVersion.PROGRAM, "Version", ProgramVersion.version())));
        return about;
    }

    private Map<String, Object> sensor(Place place, SensorStream stream) {
        Map<String, Object> sensor = new LinkedHashMap<>();
        sensor.put("TaskName", TASK);
        sensor.put("TaskDescription", WORDS.say("task"));
        sensor.put("TrackingSystemName", label(place.words(), "sensor"));
        sensor.put("SamplingFrequency", Math.rint(stream.rateHz()));
        sensor.put("SamplingFrequencyEffective", stream.rateHz());
        sensor.put("RecordingDuration", stream.durationS());
        sensor.put("MotionChannelCount", SampleTable.CHANNELS.length);
        sensor.put("ACCELChannelCount", 3);
        sensor.put("GYROChannelCount", 3);
        sensor.put("LATENCYChannelCount", 1);
        sensor.put("TrackedPointsCount", 1);
        sensor.put("MissingValues", WORDS.say("missing"));
        sensor.put("SoftwareVersions", ProgramVersion.PROGRAM + " " + ProgramVersion.version());
        return sensor;
    }

    /** What the axes of the channels are. */
    private static Map<String, Object> axes() {
        Map<String, Object> frame = new LinkedHashMap<>();
        frame.put("SpatialAxes", "___");
        frame.put("RotationRule", "right-hand");
        frame.put("Description", WORDS.say("axes.sensor"));
        return Map.of("reference_frame", Map.of("Description", WORDS.say("axes"), "Levels", Map.of("sensor", frame)));
    }

    private String readme() {
        return WORDS.say(
                "readme",
                recording.places().size(),
                ProgramVersion.PROGRAM,
                ProgramVersion.version(),
                session.filter().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** Letters and digits only, which is all a label of the standard may hold. */
    private static String label(String text, String otherwise) {
        String label = text.replaceAll("[^A-Za-z0-9]", "");
        return label.isEmpty() ? otherwise : label;
    }

    private static void document(Path file, Map<String, ?> content) throws IOException {
        text(file, PlainDocument.of(content));
    }

    private static void text(Path file, String content) throws IOException {
        Files.writeString(file, content, StandardCharsets.UTF_8);
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }
}

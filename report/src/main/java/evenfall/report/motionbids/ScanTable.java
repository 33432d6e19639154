package evenfall.report.motionbids;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Words;
import evenfall.report.csv.PlainNumber;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** The table of recordings, with what is needed to lay one sensor's samples beside the other's. */
final class ScanTable {

    private static final Words WORDS = Words.beside(ScanTable.class);

    static final String HEADER =
            "filename\tacq_time\tclock_offset_s\tclock_drift_ppm\tacceleration_range\tturn_rate_range\n";
    private static final String MISSING = "n/a";

    private ScanTable() {}

    static String row(String file, String day, Place place, SensorStream stream, RecordingAnalysis analysis) {
        ClockMap clock = place == Place.PELVIS ? new ClockMap(0, 0, 0, "") : analysis.clock();
        return String.join(
                        "\t",
                        file,
                        day + "T00:00:00",
                        clock == null ? MISSING : PlainNumber.of(clock.offsetS()),
                        clock == null ? MISSING : PlainNumber.of(clock.driftPpm()),
                        range(stream.accelerationRange()),
                        range(stream.turnRateRange()))
                + "\n";
    }

    /** The columns of our own, described. */
    static Map<String, Object> columns() {
        Map<String, Object> columns = new LinkedHashMap<>();
        columns.put("clock_offset_s", Map.of("Description", WORDS.say("scan.offset"), "Units", "s"));
        columns.put("clock_drift_ppm", Map.of("Description", WORDS.say("scan.drift")));
        columns.put("acceleration_range", Map.of("Description", WORDS.say("scan.acceleration"), "Units", "m/s^2"));
        columns.put("turn_rate_range", Map.of("Description", WORDS.say("scan.turn"), "Units", "rad/s"));
        return columns;
    }

    private static String range(OptionalDouble range) {
        return range.isPresent() ? PlainNumber.of(range.getAsDouble()) : MISSING;
    }
}

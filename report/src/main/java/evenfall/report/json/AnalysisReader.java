package evenfall.report.json;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * Reads the document of a session's landings back into an analysis, without the traces, which the document does not
 * hold.
 */
public final class AnalysisReader {

    private AnalysisReader() {}

    /**
     * The analysis in a document of this version and filter; empty if another version or filter made it, or if it
     * cannot be read.
     */
    public static Optional<RecordingAnalysis> read(String document, String version, FilterKind filter) {
        try {
            JsonNode root = JsonTree.read(document);
            if (!version.equals(text(root, "version")) || !filter.code().equals(text(root, "filter"))) {
                return Optional.empty();
            }
            return Optional.of(analysis(root));
        } catch (JacksonException | IllegalArgumentException e) {
            // A result that cannot be read is made again from the raw files.
            return Optional.empty();
        }
    }

    /** The version a document says it was made by; empty if it says none. */
    public static Optional<String> version(String document) {
        try {
            return Optional.ofNullable(text(JsonTree.read(document), "version"));
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    private static RecordingAnalysis analysis(JsonNode root) {
        JsonNode recording = Fields.object(root, "recording");
        Map<Place, Mounting> mounting = new EnumMap<>(Place.class);
        JsonNode mountings = Fields.object(recording, "mounting");
        for (Place place : Place.values()) {
            JsonNode node = mountings.get(place.code());
            if (node != null) {
                mounting.put(place, mounting(node));
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (JsonNode node : Fields.array(recording, "findings")) {
            findings.add(finding(node));
        }
        List<Landing> landings = new ArrayList<>();
        for (JsonNode node : Fields.array(root, "landings")) {
            landings.add(LandingReader.read(node));
        }
        List<Double> heelDrops = new ArrayList<>();
        recording.path("heelDropsS").forEach(at -> heelDrops.add(at.asDouble()));
        return new RecordingAnalysis(
                Fields.number(recording, "durationS"),
                Fields.number(recording, "rateHz"),
                clock(Fields.objectOrNull(recording, "clock")),
                mounting,
                findings,
                heelDrops,
                landings,
                Map.of());
    }

    private static @Nullable ClockMap clock(@Nullable JsonNode node) {
        if (node == null) {
            return null;
        }
        return new ClockMap(
                Fields.number(node, "offsetS"),
                Fields.number(node, "driftPpm"),
                Fields.number(node, "sigmaMs"),
                node.path("method").asString());
    }

    private static Mounting mounting(JsonNode node) {
        JsonNode q = Fields.array(node, "segmentFromSensor");
        return new Mounting(
                new Quaternion(
                        q.path(0).asDouble(),
                        q.path(1).asDouble(),
                        q.path(2).asDouble(),
                        q.path(3).asDouble()),
                Fields.coded(node, "method", MountingMethod.values(), MountingMethod::code),
                Fields.number(node, "sigmaDeg"));
    }

    private static Finding finding(JsonNode node) {
        return new Finding(
                Fields.coded(node, "code", FindingCode.values(), FindingCode::code),
                Fields.coded(node, "severity", Severity.values(), Severity::code),
                node.path("message").asString(),
                Fields.codedOrNull(node, "sensor", Place.values(), Place::code),
                Fields.numberOrNull(node, "atS"));
    }

    private static @Nullable String text(JsonNode node, String name) {
        JsonNode value = node.get(name);
        return value == null || !value.isString() ? null : value.asString();
    }
}

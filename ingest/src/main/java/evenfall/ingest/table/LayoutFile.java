package evenfall.ingest.table;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.SignedAxis;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a layout file, strictly: a field that is unknown, missing or of the wrong kind is named and refused. */
final class LayoutFile {

    private static final Words WORDS = Words.beside(LayoutFile.class);

    private static final long LARGEST = 1 << 20;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String source;

    private LayoutFile(String source) {
        this.source = source;
    }

    /**
     * Reads a layout.
     *
     * @throws UnusableInputException if it cannot be used
     */
    static Layout read(Path file) throws IOException {
        String source = String.valueOf(file.getFileName());
        FileCheck.regular(file, WORDS.say("kind.layout"));
        if (Files.size(file) > LARGEST) {
            throw new UnusableInputException(WORDS.say("layout.large", source, String.valueOf(Files.size(file))));
        }
        JsonNode root;
        try {
            root = JSON.readTree(FileCheck.text(Files.readAllBytes(file)));
        } catch (JacksonException e) {
            var at = e.getLocation();
            throw new UnusableInputException(
                    WORDS.say(
                            "layout.json",
                            source,
                            (at == null
                                    ? ""
                                    : WORDS.say(
                                            "layout.json.at",
                                            String.valueOf(at.getLineNr()),
                                            String.valueOf(at.getColumnNr())))),
                    e);
        }
        return new LayoutFile(source).layout(root);
    }

    private Layout layout(JsonNode root) {
        object(root, WORDS.say("layout.whole"));
        known(
                root,
                "",
                Set.of(
                        "separator",
                        "headerLines",
                        "rateHz",
                        "time",
                        "accelerometer",
                        "gyroscope",
                        "axes",
                        "sensorColumn",
                        "sensors"));
        OptionalDouble rate = root.has("rateHz") && !root.get("rateHz").isNull()
                ? OptionalDouble.of(positive(root, "", "rateHz"))
                : OptionalDouble.empty();
        Layout.@Nullable TimeColumn time = time(required(root, "", "time"));
        if (rate.isEmpty() && (time == null || time.unit() == Unit.SAMPLES)) {
            throw missing("rateHz", WORDS.say("field.rateHz"));
        }
        Layout.Sensor accelerometer = sensor(root, "accelerometer", Quantity.ACCELERATION);
        Layout.Sensor gyroscope = sensor(root, "gyroscope", Quantity.TURN_RATE);
        JsonNode sensorColumn = root.get("sensorColumn");
        JsonNode sensors = root.get("sensors");
        boolean several = sensorColumn != null && !sensorColumn.isNull();
        if (several && sensors == null) {
            throw missing("sensors", WORDS.say("field.sensors"));
        }
        if (!several && sensors != null && !sensors.isNull()) {
            throw missing("sensorColumn", WORDS.say("field.sensorColumn"));
        }
        return new Layout(
                source,
                separator(root.get("separator")),
                headerLines(root),
                rate,
                time,
                accelerometer,
                gyroscope,
                axes(root.get("axes")),
                several ? column(sensorColumn, "sensorColumn") : null,
                several ? sensors(sensors) : Map.of());
    }

    private @Nullable Character separator(@Nullable JsonNode node) {
        if (node == null || node.isNull()) {
            return null;
        }
        String text = node.isString() ? node.asString() : "";
        if (text.equalsIgnoreCase("tab") || text.equals("\\t")) {
            return '\t';
        }
        if (text.length() == 1 && text.charAt(0) < 128 && !Character.isLetterOrDigit(text.charAt(0))) {
            char c = text.charAt(0);
            if ("\"'.+-\r\n#".indexOf(c) < 0) {
                return c;
            }
        }
        throw wrong("separator", WORDS.say("wanted.separator"), node);
    }

    private int headerLines(JsonNode root) {
        JsonNode node = root.get("headerLines");
        if (node == null) {
            return 0;
        }
        if (!node.isIntegralNumber() || !node.canConvertToInt() || node.asInt() < 0 || node.asInt() > 100_000) {
            throw wrong("headerLines", WORDS.say("wanted.lines"), node);
        }
        return node.asInt();
    }

    private Layout.@Nullable TimeColumn time(JsonNode node) {
        if (node.isNull()) {
            return null;
        }
        object(node, "time");
        known(node, "time.", Set.of("column", "unit", "wrapsAt"));
        String unitText = string(required(node, "time.", "unit"), "time.unit");
        Unit unit = Unit.parse(Quantity.TIME, unitText)
                .orElseThrow(() -> wrong("time.unit", WORDS.say("wanted.time"), node.get("unit")));
        double wrapsAt = 0;
        if (node.has("wrapsAt") && !node.get("wrapsAt").isNull()) {
            if (unit == Unit.ISO_8601) {
                throw new UnusableInputException(WORDS.say("layout.wraps", source));
            }
            wrapsAt = positive(node, "time.", "wrapsAt");
        }
        return new Layout.TimeColumn(column(required(node, "time.", "column"), "time.column"), unit, wrapsAt);
    }

    private Layout.Sensor sensor(JsonNode root, String name, Quantity quantity) {
        JsonNode node = required(root, "", name);
        object(node, name);
        String prefix = name + ".";
        known(node, prefix, Set.of("columns", "unit", "scale", "range"));
        JsonNode columns = required(node, prefix, "columns");
        if (!columns.isArray() || columns.size() != 3) {
            throw wrong(prefix + "columns", WORDS.say("wanted.columns"), columns);
        }
        List<Layout.Column> xyz = new ArrayList<>();
        for (JsonNode each : columns) {
            Layout.Column column = column(each, prefix + "columns");
            if (xyz.contains(column)) {
                throw new UnusableInputException(WORDS.say("layout.axis.twice", source, prefix, each));
            }
            xyz.add(column);
        }
        JsonNode unitNode = required(node, prefix, "unit");
        Unit unit = Unit.parse(quantity, string(unitNode, prefix + "unit"))
                .orElseThrow(() -> wrong(prefix + "unit", quantity.units(), unitNode));
        required(node, prefix, "scale");
        double scale = number(node, prefix, "scale");
        if (scale == 0) {
            throw wrong(prefix + "scale", WORDS.say("wanted.scale"), node.get("scale"));
        }
        OptionalDouble range = node.has("range") && !node.get("range").isNull()
                ? OptionalDouble.of(positive(node, prefix, "range"))
                : OptionalDouble.empty();
        return new Layout.Sensor(List.copyOf(xyz), unit, scale, range);
    }

    private @Nullable BodyAxes axes(@Nullable JsonNode node) {
        if (node == null || node.isNull()) {
            return null;
        }
        object(node, "axes");
        known(node, "axes.", Set.of("forward", "up"));
        SignedAxis forward = axis(node, "forward");
        SignedAxis up = axis(node, "up");
        if (forward.axis() == up.axis()) {
            throw new UnusableInputException(WORDS.say("layout.axes", source));
        }
        return new BodyAxes(forward, up);
    }

    private SignedAxis axis(JsonNode node, String name) {
        JsonNode value = required(node, "axes.", name);
        return SignedAxis.parse(string(value, "axes." + name))
                .orElseThrow(() -> wrong("axes." + name, WORDS.say("wanted.axis"), value));
    }

    private Map<Place, String> sensors(JsonNode node) {
        object(node, "sensors");
        known(node, "sensors.", Set.of(Place.PELVIS.code(), Place.UPPER_BACK.code()));
        Map<Place, String> sensors = new EnumMap<>(Place.class);
        for (Place place : Place.values()) {
            JsonNode name = node.get(place.code());
            if (name != null && !name.isNull()) {
                if (!name.isString() && !name.isNumber()) {
                    throw wrong("sensors." + place.code(), WORDS.say("wanted.sensor"), name);
                }
                String text = name.asString().strip();
                if (sensors.containsValue(text)) {
                    throw new UnusableInputException(WORDS.say("layout.sensors", source, text));
                }
                sensors.put(place, text);
            }
        }
        if (!sensors.containsKey(Place.PELVIS)) {
            throw missing("sensors.pelvis", WORDS.say("field.pelvis"));
        }
        return sensors;
    }

    private Layout.Column column(JsonNode node, String field) {
        if (node.isIntegralNumber() && node.canConvertToInt() && node.asInt() >= 0 && node.asInt() < 10_000) {
            return new Layout.Column(node.asInt(), null);
        }
        if (node.isString() && !node.asString().isBlank()) {
            return new Layout.Column(-1, node.asString().strip());
        }
        throw wrong(field, WORDS.say("wanted.column"), node);
    }

    private double positive(JsonNode node, String prefix, String name) {
        double value = number(node, prefix, name);
        if (value > 0) {
            return value;
        }
        throw wrong(prefix + name, WORDS.say("wanted.positive"), node.get(name));
    }

    private double number(JsonNode node, String prefix, String name) {
        JsonNode value = node.get(name);
        if (value.isNumber() && Double.isFinite(value.asDouble())) {
            return value.asDouble();
        }
        throw wrong(prefix + name, WORDS.say("wanted.number"), value);
    }

    private String string(JsonNode node, String field) {
        if (node.isString()) {
            return node.asString();
        }
        throw wrong(field, WORDS.say("wanted.text"), node);
    }

    private void object(JsonNode node, String what) {
        if (!node.isObject()) {
            throw wrong(what, WORDS.say("wanted.object"), node);
        }
    }

    private JsonNode required(JsonNode node, String prefix, String name) {
        JsonNode value = node.get(name);
        if (value == null) {
            throw missing(prefix + name, explanation(name));
        }
        return value;
    }

    private void known(JsonNode node, String prefix, Set<String> names) {
        for (String name : node.propertyNames()) {
            if (!names.contains(name)) {
                throw new UnusableInputException(WORDS.say(
                        "layout.unknown",
                        source,
                        prefix,
                        name,
                        String.join(", ", names.stream().sorted().toList())));
            }
        }
    }

    private UnusableInputException missing(String field, String explanation) {
        return new UnusableInputException(WORDS.say("layout.lacks", source, field, explanation));
    }

    private UnusableInputException wrong(String field, String wanted, JsonNode found) {
        String shown = found.toString();
        return new UnusableInputException(WORDS.say(
                "layout.wrong", source, field, (shown.length() > 60 ? shown.substring(0, 60) + "..." : shown), wanted));
    }

    /** What a field that is missing would hold. */
    private static String explanation(String name) {
        String key = "explained." + name;
        return WORDS.say(WORDS.knows(key) ? key : "explained.elsewhere");
    }
}

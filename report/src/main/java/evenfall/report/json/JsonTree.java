package evenfall.report.json;

import evenfall.report.notation.JsonStreams;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes trees of JSON; for why no general mapper does this see {@link JsonStreams}. */
final class JsonTree {

    private JsonTree() {}

    /** An object without fields. */
    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /**
     * The first value of a text; a missing node where there is none.
     *
     * @throws StreamReadException if the text is not JSON
     */
    static JsonNode read(String text) {
        try (JsonParser parser = JsonStreams.of(text)) {
            JsonToken first = parser.nextToken();
            return first == null ? MissingNode.getInstance() : value(parser, first);
        }
    }

    private static JsonNode value(JsonParser parser, JsonToken token) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> nodes.stringNode(parser.getString());
            case VALUE_NUMBER_INT -> number(parser);
            case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> nodes.booleanNode(true);
            case VALUE_FALSE -> nodes.booleanNode(false);
            case VALUE_NULL -> nodes.nullNode();
            default -> throw new StreamReadException(parser, "a value should stand here");
        };
    }

    private static JsonNode number(JsonParser parser) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return switch (parser.getNumberType()) {
            case INT -> nodes.numberNode(parser.getIntValue());
            case LONG -> nodes.numberNode(parser.getLongValue());
            default -> nodes.numberNode(parser.getBigIntegerValue());
        };
    }

    private static ObjectNode object(JsonParser parser) {
        ObjectNode object = object();
        for (String name = parser.nextName(); name != null; name = parser.nextName()) {
            object.set(name, value(parser, parser.nextToken()));
        }
        return object;
    }

    private static ArrayNode array(JsonParser parser) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            array.add(value(parser, token));
        }
        return array;
    }

    /** The text of a tree, in one line or indented over several. */
    static String write(JsonNode tree, boolean indented) {
        return JsonStreams.text(indented, out -> write(tree, out));
    }

    private static void write(JsonNode node, JsonGenerator generator) {
        switch (node.getNodeType()) {
            case OBJECT -> {
                generator.writeStartObject();
                for (Map.Entry<String, JsonNode> field : node.properties()) {
                    generator.writeName(field.getKey());
                    write(field.getValue(), generator);
                }
                generator.writeEndObject();
            }
            case ARRAY -> {
                generator.writeStartArray();
                for (JsonNode element : node.values()) {
                    write(element, generator);
                }
                generator.writeEndArray();
            }
            case STRING -> generator.writeString(node.stringValue());
            case NUMBER -> number(node, generator);
            case BOOLEAN -> generator.writeBoolean(node.booleanValue());
            case NULL -> generator.writeNull();
            default -> throw new IllegalArgumentException("no JSON: " + node.getNodeType());
        }
    }

    private static void number(JsonNode node, JsonGenerator generator) {
        switch (node.numberType()) {
            case INT -> generator.writeNumber(node.intValue());
            case LONG -> generator.writeNumber(node.longValue());
            case DOUBLE, FLOAT -> generator.writeNumber(node.doubleValue());
            case BIG_INTEGER -> generator.writeNumber(node.bigIntegerValue());
            case BIG_DECIMAL -> generator.writeNumber(node.decimalValue());
        }
    }
}

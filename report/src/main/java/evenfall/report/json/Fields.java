package evenfall.report.json;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Takes values out of a JSON object; what is missing or of another kind is an {@link IllegalArgumentException}. */
final class Fields {

    private Fields() {}

    static JsonNode object(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null || !value.isObject()) {
            throw new IllegalArgumentException("no object '" + name + "'");
        }
        return value;
    }

    static JsonNode array(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null || !value.isArray()) {
            throw new IllegalArgumentException("no array '" + name + "'");
        }
        return value;
    }

    /** An object, or null where the document says null. */
    static @Nullable JsonNode objectOrNull(JsonNode node, String name) {
        return present(node, name).isNull() ? null : object(node, name);
    }

    private static JsonNode present(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no '" + name + "'");
        }
        return value;
    }

    static boolean truth(JsonNode node, String name) {
        JsonNode value = present(node, name);
        if (!value.isBoolean()) {
            throw new IllegalArgumentException("'" + name + "' is neither true nor false");
        }
        return value.asBoolean();
    }

    static double number(JsonNode node, String name) {
        Double value = numberOrNull(node, name);
        if (value == null) {
            throw new IllegalArgumentException("no number '" + name + "'");
        }
        return value;
    }

    static @Nullable Double numberOrNull(JsonNode node, String name) {
        JsonNode value = present(node, name);
        if (value.isNull()) {
            return null;
        }
        if (!value.isNumber()) {
            throw new IllegalArgumentException("'" + name + "' is no number");
        }
        return value.asDouble();
    }

    static @Nullable Integer wholeOrNull(JsonNode node, String name) {
        Double value = numberOrNull(node, name);
        return value == null ? null : Integer.valueOf((int) Math.round(value));
    }

    static <E> E coded(JsonNode node, String name, E[] values, Function<E, String> code) {
        E value = codedOrNull(node, name, values, code);
        if (value == null) {
            throw new IllegalArgumentException("no '" + name + "'");
        }
        return value;
    }

    static <E> @Nullable E codedOrNull(JsonNode node, String name, E[] values, Function<E, String> code) {
        JsonNode text = present(node, name);
        if (text.isNull()) {
            return null;
        }
        for (E value : values) {
            if (code.apply(value).equals(text.asString())) {
                return value;
            }
        }
        throw new IllegalArgumentException("'" + name + "' is none of the words known");
    }
}

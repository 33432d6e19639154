package evenfall.report.json;

import evenfall.report.csv.PlainNumber;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How this package writes numbers and text. */
final class JsonText {

    private JsonText() {}

    /** Several lines, indented. */
    static String pretty(JsonNode node) {
        return JsonTree.write(node, true).replace("\r\n", "\n") + "\n";
    }

    /** Puts a number, or null for a missing one or one that is not finite. */
    static void put(ObjectNode node, String name, @Nullable Double value) {
        if (value == null || !Double.isFinite(value)) {
            node.putNull(name);
        } else {
            node.put(name, PlainNumber.rounded(value));
        }
    }

    /** Puts a whole number or null. */
    static void put(ObjectNode node, String name, @Nullable Integer value) {
        if (value == null) {
            node.putNull(name);
        } else {
            node.put(name, value.intValue());
        }
    }

    /** Puts a text or null. */
    static void put(ObjectNode node, String name, @Nullable String value) {
        if (value == null) {
            node.putNull(name);
        } else {
            node.put(name, value);
        }
    }

    /** Puts texts in the order given. */
    static void putAll(ObjectNode node, String name, Collection<String> values) {
        ArrayNode array = node.putArray(name);
        values.forEach(array::add);
    }
}

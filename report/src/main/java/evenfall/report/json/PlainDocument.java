package evenfall.report.json;

import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** Writes names and values (texts, numbers, lists and maps of such) as a document. */
public final class PlainDocument {

    private PlainDocument() {}

    /** The whole document, indented, in the map's order. */
    public static String of(Map<String, ?> content) {
        return JsonText.pretty(JsonMapper.shared().valueToTree(content));
    }
}

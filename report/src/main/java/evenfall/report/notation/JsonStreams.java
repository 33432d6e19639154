package evenfall.report.notation;

import java.io.StringWriter;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Opens the library's streams of JSON. Its mapper, which finds out by itself how to treat Java objects, loads four hundred classes
 * at every start: a quarter of a second, and half of the time in which a log is listed.
 */
public final class JsonStreams {

    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonStreams() {}

    /** A stream of what a text holds. */
    public static JsonParser of(String text) {
        return FACTORY.createParser(ObjectReadContext.empty(), text);
    }

    /** The text that {@code body} writes, in one line or indented over several. */
    public static String text(boolean indented, Consumer<JsonGenerator> body) {
        StringWriter text = new StringWriter();
        ObjectWriteContext context = indented ? new Indented() : ObjectWriteContext.empty();
        try (JsonGenerator out = FACTORY.createGenerator(context, text)) {
            body.accept(out);
        }
        return text.toString();
    }

    private static final class Indented extends ObjectWriteContext.Base {

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }

        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
        }
    }
}

package evenfall.report.chart;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Writes a drawing as short markup: attributes in order of name, those left out that say what holds anyway, and groups
 * that hold nothing. Namespaces are not written: inside HTML an {@code svg} element needs none.
 */
final class SvgWriter {

    /** Rendering hints, the typeface (the page states it) and other things no browser needs to be told. */
    private static final Set<String> NEVER = Set.of(
            "color-interpolation",
            "color-rendering",
            "font-family",
            "image-rendering",
            "shape-rendering",
            "text-rendering",
            "xml:space",
            "contentScriptType",
            "contentStyleType",
            "preserveAspectRatio",
            "zoomAndPan",
            "version",
            "xmlns",
            "xmlns:xlink");

    /** Values that hold for an element that says nothing, and around which no other is set here, as one is for the caps. */
    private static final Map<String, String> DEFAULTS = Map.of(
            "stroke-linejoin", "miter",
            "stroke-miterlimit", "10",
            "stroke-dashoffset", "0",
            "stroke-opacity", "1",
            "fill-opacity", "1",
            "font-style", "normal");

    private final Markup out = new Markup();

    private SvgWriter() {}

    static String write(Element root) {
        SvgWriter writer = new SvgWriter();
        writer.element(root);
        return writer.out.toString();
    }

    private void element(Element element) {
        String name = element.getTagName();
        if ((name.equals("g") || name.equals("defs")) && !holdsElements(element)) {
            return;
        }
        out.raw("<" + name);
        attributes(element);
        if (element.getFirstChild() == null) {
            out.raw("/>");
            return;
        }
        out.raw(">");
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                element(inner);
            } else if (child instanceof Text text) {
                out.text(text.getData());
            }
        }
        out.raw("</" + name + ">");
    }

    private static boolean holdsElements(Element element) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element) {
                return true;
            }
        }
        return false;
    }

    private void attributes(Element element) {
        NamedNodeMap all = element.getAttributes();
        Map<String, String> ordered = new TreeMap<>();
        for (int i = 0; i < all.getLength(); i++) {
            ordered.put(all.item(i).getNodeName(), all.item(i).getNodeValue());
        }
        ordered.forEach((name, value) -> {
            if (!NEVER.contains(name) && !value.equals(DEFAULTS.get(name))) {
                out.attribute(name, value);
            }
        });
    }
}

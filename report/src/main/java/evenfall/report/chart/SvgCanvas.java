package evenfall.report.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** A sheet to draw on that becomes a {@link Picture}: first with a {@link Graphics2D}, then with elements laid under it and on top. */
final class SvgCanvas {

    static final String SVG = "http://www.w3.org/2000/svg";

    private static final int DECIMALS = 1;

    private final Document document;
    private @Nullable SVGGraphics2D graphics;
    private final List<Element> beneath = new ArrayList<>();
    private final List<Element> onTop = new ArrayList<>();
    private final Map<String, String> notes = new TreeMap<>();
    private final int width;
    private final int height;
    private final String id;

    /**
     * @param id starts every id inside, so that drawings can share a page; unique on it
     * @param width of the drawing, px
     */
    SvgCanvas(String id, int width, int height) {
        this.id = id;
        this.width = width;
        this.height = height;
        document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
    }

    /** Where to draw; made when it is first asked for, since a sign is elements alone. */
    SVGGraphics2D graphics() {
        SVGGraphics2D made = graphics;
        if (made == null) {
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setIDGenerator(new Ids(id));
            context.setPrecision(DECIMALS);
            context.setComment(null);
            made = new SVGGraphics2D(context, false);
            made.setSVGCanvasSize(new Dimension(width, height));
            graphics = made;
        }
        return made;
    }

    /** A new element that {@link #add} can lay on top or another element can hold; attributes as name, value pairs. */
    Element element(String name, String... attributes) {
        Element element = document.createElementNS(SVG, name);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            element.setAttribute(attributes[i], attributes[i + 1]);
        }
        return element;
    }

    /** A new element that holds text. */
    Element text(String name, String content, String... attributes) {
        Element element = element(name, attributes);
        element.appendChild(document.createTextNode(content));
        return element;
    }

    /** Lays an element over what is drawn. */
    void add(Element element) {
        onTop.add(element);
    }

    /** Lays an element under what is drawn. */
    void under(Element element) {
        beneath.add(element);
    }

    /** A mark on the whole drawing, for the page's script. */
    void note(String attribute, String value) {
        notes.put(attribute, value);
    }

    /**
     * The drawing.
     *
     * @param title tells it to those who cannot see it
     * @param painter draws the same on another sheet
     */
    Picture finish(String title, Consumer<Graphics2D> painter) {
        Element root = element("svg", "viewBox", "0 0 " + width + " " + height, "id", id);
        root.setAttribute(
                "role", onTop.stream().noneMatch(element -> element.getTagName().equals("a")) ? "img" : "group");
        root.setAttribute("aria-label", title);
        notes.forEach(root::setAttribute);
        beneath.forEach(root::appendChild);
        root.appendChild(ground());
        onTop.forEach(root::appendChild);
        graphics().dispose();
        return new Picture(SvgWriter.write(root), width, height, title, painter);
    }

    /** What was drawn as one group that other drawings refer to by {@code id}. */
    Svg group() {
        Element group = ground();
        group.setAttribute("id", id);
        graphics().dispose();
        return new Svg(SvgWriter.write(group));
    }

    private Element ground() {
        Element drawn = graphics().getRoot();
        Element ground = element("g");
        NamedNodeMap defaults = drawn.getAttributes();
        for (int i = 0; i < defaults.getLength(); i++) {
            String name = defaults.item(i).getNodeName();
            if (!name.equals("width") && !name.equals("height")) {
                ground.setAttribute(name, defaults.item(i).getNodeValue());
            }
        }
        while (drawn.getFirstChild() != null) {
            ground.appendChild(drawn.getFirstChild());
        }
        return ground;
    }

    /** What lies on top alone, as a sign in a line of text; told to nobody who cannot see it. */
    Svg sign(String styleClass) {
        Element root = element("svg", "viewBox", "0 0 " + width + " " + height, "class", styleClass);
        root.setAttribute("aria-hidden", "true");
        onTop.forEach(root::appendChild);
        return new Svg(SvgWriter.write(root));
    }

    /** Numbers the ids of one drawing. */
    private static final class Ids extends SVGIDGenerator {

        private final String id;
        private int count;

        Ids(String id) {
            this.id = id;
        }

        @Override
        public String generateID(String prefix) {
            count++;
            return id + "-" + count;
        }
    }
}

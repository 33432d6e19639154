package evenfall.report.html;

import evenfall.report.words.Ties;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A page as a checker sees it. Our pages are written so that an XML parser reads them too. */
final class Markup {

    private final Document document;

    private Markup(Document document) {
        this.document = document;
    }

    /** Of a page, with plain blanks where no line may end. */
    static Markup of(String page) throws Exception {
        // What a script holds is no markup, to an HTML parser either.
        String body = Ties.loose(page)
                .replaceFirst("^<!DOCTYPE html>", "")
                .replaceAll("(?s)(<script>).*?(</script>)", "$1$2");
        return new Markup(DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(body))));
    }

    List<Element> all(String tag) {
        NodeList nodes = document.getElementsByTagName(tag);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    List<Element> ofClass(String tag, String styleClass) {
        return all(tag).stream()
                .filter(element ->
                        List.of(element.getAttribute("class").split(" ")).contains(styleClass))
                .toList();
    }

    List<String> values(String attribute) {
        return all("*").stream()
                .filter(element -> element.hasAttribute(attribute))
                .map(element -> element.getAttribute(attribute))
                .toList();
    }

    String text() {
        return document.getDocumentElement().getTextContent();
    }
}

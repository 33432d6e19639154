package evenfall.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DemoPageTest {

    @Test
    void aDayThatHurt_saysSo_andTheNewestStandsFirst() throws Exception {
        Session hurt = InventedSessions.session(List.of(), List.of(), List.of(InventedBlocks.pain(4)));
        Session well = InventedSessions.session(List.of(), List.of(), List.of(InventedBlocks.pain(0)));
        StringBuilder text = new StringBuilder();
        DemoPage.write(
                "A",
                "B",
                "block.html",
                List.of(
                        DemoPage.Entry.of("3 March 2026", "session-2026-03-03.html", hurt),
                        DemoPage.Entry.of("6 March 2026", "session-2026-03-06.html", well)),
                List.of(),
                text);
        Markup page = Markup.of(text.toString());

        assertThat(page.all("dt").stream().map(Element::getTextContent))
                .containsExactly("6 March 2026", "3 March 2026");
        assertThat(page.all("dd").stream().map(Element::getTextContent))
                .containsExactly("No landing was found.", "Pain: left ankle 4 of 10. No landing was found.");
    }
}

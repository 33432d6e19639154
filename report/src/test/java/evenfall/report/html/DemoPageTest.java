package evenfall.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.log.SessionDate;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DemoPageTest {

    private static final LocalDate THIRD = LocalDate.of(2026, 3, 3);

    @Test
    void aDayWithoutASession_isToldOnlyIfSomethingHurt() {
        assertThat(DemoPage.Entry.of(THIRD, List.of(InventedBlocks.pain(0)))).isEmpty();
    }

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
                        DemoPage.Entry.of(new SessionDate(THIRD, 0), "session-2026-03-03.html", hurt),
                        DemoPage.Entry.of(new SessionDate(THIRD.plusDays(3), 0), "session-2026-03-06.html", well),
                        DemoPage.Entry.of(THIRD.plusDays(1), List.of(InventedBlocks.pain(2)))
                                .orElseThrow()),
                List.of(),
                text);
        Markup page = Markup.of(text.toString());

        assertThat(page.all("dt").stream().map(Element::getTextContent))
                .containsExactly("6 March 2026", "4 March 2026", "3 March 2026");
        assertThat(page.all("a").stream().map(link -> link.getAttribute("href")))
                .containsExactly("block.html", "session-2026-03-06.html", "session-2026-03-03.html");
        assertThat(page.all("dd").stream().map(Element::getTextContent))
                .containsExactly(
                        "No landing was found.",
                        "Pain: left ankle 2 of 10.",
                        "Pain: left ankle 4 of 10. No landing was found.");
    }
}

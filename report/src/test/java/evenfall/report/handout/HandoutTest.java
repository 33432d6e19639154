package evenfall.report.handout;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.heed.OpenPain;
import evenfall.report.heed.Standing;
import evenfall.report.html.SessionPage;
import evenfall.report.html.SheetViews;
import evenfall.report.paper.Paper;
import evenfall.report.session.Background;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What is handed out on paper must say what the pages say, and what stops must stand first. */
final class HandoutTest {

    @Test
    void aSession_saysItsSentence_listsAllLandings_andShowsThoseThatPassedALimit() throws IOException {
        Session session = InventedSessions.of(12, 3);
        try (PDDocument paper = printed(SessionHandout.of(SessionPage.view(session, Background.NONE)))) {
            String text = text(paper);
            assertThat(text).contains("12 landings from 0.4 to 1.2 m").contains("Pain means stop");
            assertThat(text.split("Value ± error", -1)).hasSize(passed(session) + 1);
            for (int i = 1; i <= 12; i++) {
                assertThat(text).containsPattern("(?m)^" + i + " \\d+:\\d\\d ");
            }
            assertThat(text.split("From behind. Farthest leaned within 0.6 s of contact", -1))
                    .as("at which moment a figure is taken")
                    .hasSize(passed(session) + 1);
            assertThat(paper.getNumberOfPages())
                    .as("the rest beside a page for each that passed a limit")
                    .isLessThanOrEqualTo(passed(session) + 4);
        }
    }

    @Test
    void aSessionWithoutLandings_isAPaperToo() throws IOException {
        Session session = InventedSessions.session(List.of(), List.of(), List.of());
        try (PDDocument paper = printed(SessionHandout.of(SessionPage.view(session, Background.NONE)))) {
            assertThat(text(paper)).contains("No landing was found.");
        }
    }

    @Test
    void theSheet_isOnePage_withOneTask() throws IOException {
        for (int landings : new int[] {1, 2, 12, 40}) {
            Session session = InventedSessions.of(landings, 3);
            try (PDDocument paper = printed(AthleteSheet.of(SheetViews.of(session, List.of(session), Standing.NONE)))) {
                assertThat(paper.getNumberOfPages()).isEqualTo(1);
                assertThat(text(paper))
                        .contains("One thing to work on")
                        .contains("If something hurts: stop")
                        .contains(landings > 2 ? "Keep your chest over the middle" : "Nothing gave way more than once");
            }
        }
    }

    @Test
    void openPain_standsFirst_andTheOnlyTaskIsToStop() throws IOException {
        Session session = InventedSessions.of(12, 3);
        LocalDate day = LocalDate.of(2026, 3, 4);
        Standing pain = new Standing(null, List.of(new OpenPain("left knee", 4, day, day)), List.of(), false);
        String stop = pain.sentences().get(0);
        try (PDDocument paper = printed(AthleteSheet.of(SheetViews.of(session, List.of(), pain)))) {
            String text = text(paper).replace('\n', ' ');
            assertThat(text).contains(stop).contains("No drops now").doesNotContain("Keep your chest");
            assertThat(text.indexOf(stop)).isLessThan(text.indexOf("12 landings"));
        }
    }

    @Test
    void aPractitionersLimit_standsFirst_andStopsNothingElse() throws IOException {
        Session session = InventedSessions.of(12, 3);
        Standing limit = new Standing("no drops above 0.3 m", List.of(), List.of(), false);
        try (PDDocument paper = printed(AthleteSheet.of(SheetViews.of(session, List.of(session), limit)))) {
            assertThat(text(paper))
                    .contains("no drops above 0.3 m")
                    .contains("Keep to the limit that stands above")
                    .doesNotContain("No drops now");
        }
    }

    private static int passed(Session session) {
        return (int) session.landings().stream()
                .filter(event ->
                        event.verdict() != null && !event.verdict().reasons().isEmpty())
                .count();
    }

    private static PDDocument printed(Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        paper.write(out);
        return Loader.loadPDF(out.toByteArray());
    }

    private static String text(PDDocument document) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setLineSeparator("\n");
        return stripper.getText(document);
    }
}

package evenfall.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.chart.Picture;
import evenfall.report.chart.Typeface;
import java.awt.BasicStroke;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A paper must be readable as text, by those who listen too, and be the same each time. Roles: ISO 32000-1, 14.8.4. */
final class PaperTest {

    private static final String LONG = "Above 0.9 m the trunk leaned right in 5 of 6, and the pelvis turned left. ";

    @Test
    void textCanBeFoundAndCopied() throws IOException {
        try (PDDocument document = printed(small())) {
            assertThat(text(document))
                    .contains("18 landings from 0.4 to 1.2 m")
                    .contains("first affected")
                    .contains("peak")
                    .contains("8.4 g ± 0.2 ° – é")
                    .contains("drawn words");
        }
    }

    /** A chart grows with what a diary holds: it must not run off its page, with its heading above it. */
    @Test
    void aTallPicture_isMadeSmaller_soThatItFitsAPage() throws IOException {
        try (PDDocument document = new PDDocument()) {
            Letters letters = new Letters(document);
            for (int height : new int[] {900, 1500, 3000, 9000}) {
                Picture tall = new Picture("<svg/>", 1100, height, "a tall picture", graphics -> {});
                PicturePiece piece = new PicturePiece(List.of(tall));

                assertThat(piece.height(letters, 500)).isLessThan(Sheet.HEIGHT - 2 * Printer.MARGIN - 40);
            }
        }
    }

    @Test
    void everyLetterIsOfTheBundledFace() throws IOException {
        try (PDDocument document = printed(small())) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void titleAndLanguageAreTold() throws IOException {
        try (PDDocument document = printed(small())) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("A paper");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getViewerPreferences().displayDocTitle())
                    .isTrue();
        }
    }

    @Test
    void partsAreTagged_inTheOrderOfReading() throws IOException {
        try (PDDocument document = printed(small())) {
            PDStructureNode whole = (PDStructureNode) document.getDocumentCatalog()
                    .getStructureTreeRoot()
                    .getKids()
                    .get(0);
            List<String> roles = new ArrayList<>();
            for (Object kid : whole.getKids()) {
                roles.add(((PDStructureElement) kid).getStructureType());
            }
            assertThat(roles).containsExactly("H1", "P", "Table", "Figure");
            assertThat(((PDStructureElement) whole.getKids().get(3)).getAlternateDescription())
                    .isEqualTo("a line");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        }
    }

    @Test
    void theSameContentGivesTheSameBytes() throws IOException {
        assertThat(bytes(small())).isEqualTo(bytes(small()));
    }

    @Test
    void whatBelongsTogetherIsNotTornApart() throws IOException {
        Paper paper = new Paper("Blocks", "en");
        for (int i = 0; i < 20; i++) {
            int number = i;
            paper.together(part -> {
                part.heading(2, "Part " + number);
                part.text(TextStyle.PLAIN, LONG.repeat(8));
                part.text(TextStyle.PLAIN, "end of " + number + ".");
            });
        }
        try (PDDocument document = printed(paper)) {
            assertThat(document.getNumberOfPages()).isBetween(3, 6);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                String text = text(document, page);
                for (int i = 0; i < 20; i++) {
                    assertThat(text.contains("Part " + i + "\n")).isEqualTo(text.contains("end of " + i + "."));
                }
            }
        }
    }

    @Test
    void longTablesGoOn_withTheirHeadAgain() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            rows.add(List.of("row " + i, LONG));
        }
        Paper paper = new Paper("Table", "en").table(new TableText(List.of("name", "words"), rows, List.of(1.0, 3.0)));
        try (PDDocument document = printed(paper)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(3);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(text(document, page)).contains("name");
            }
            assertThat(text(document)).contains("row 0").contains("row 199");
        }
    }

    @Test
    void anyTextCanBePrinted() throws IOException {
        SplittableRandom random = new SplittableRandom(4);
        Paper paper = new Paper("Ώ名\u0000x", "en");
        for (int i = 0; i < 200; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(1, 200);
            for (int k = 0; k < length; k++) {
                int letter = random.nextInt(0x11000);
                text.appendCodePoint(random.nextInt(5) == 0 ? letter : 32 + letter % 90);
            }
            paper.text(TextStyle.PLAIN, text.toString());
        }
        paper.text(TextStyle.CAUTION, "w".repeat(5000));
        try (PDDocument document = printed(paper)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(1);
        }
    }

    private static Paper small() {
        return new Paper("A paper", "en")
                .heading(1, "A session")
                .text(TextStyle.SENTENCE, "18 landings from 0.4 to 1.2 m. Form held in 12, first affected at 0.9 m.")
                .table(new TableText(
                        List.of("measure", "value"), List.of(List.of("peak", "8.4 g ± 0.2 ° – é")), List.of(1.0, 1.0)))
                .picture(line());
    }

    private static byte[] bytes(Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        paper.write(out);
        return out.toByteArray();
    }

    private static PDDocument printed(Paper paper) throws IOException {
        return Loader.loadPDF(bytes(paper));
    }

    private static String text(PDDocument document) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setLineSeparator("\n");
        return stripper.getText(document);
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setLineSeparator("\n");
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    private static Picture line() {
        return new Picture("<svg/>", 300, 100, "a line", graphics -> {
            graphics.setPaint(Color.BLACK);
            graphics.setStroke(new BasicStroke(2));
            graphics.drawLine(10, 10, 290, 90);
            graphics.setFont(Typeface.REGULAR.size(12));
            graphics.drawString("drawn words", 20, 60);
        });
    }
}

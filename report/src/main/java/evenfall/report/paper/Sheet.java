package evenfall.report.paper;

import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** One page while it is printed. Places are pt from its upper left corner, y downward. */
final class Sheet {

    static final float WIDTH = PDRectangle.A4.getWidth();
    static final float HEIGHT = PDRectangle.A4.getHeight();

    private final PDPage page;
    private final PDPageContentStream stream;
    private final Letters letters;
    private final COSArray tagged = new COSArray();

    Sheet(PDDocument document, Letters letters, int number) throws IOException {
        this.letters = letters;
        page = new PDPage(PDRectangle.A4);
        page.setStructParents(number);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        document.addPage(page);
        stream = new PDPageContentStream(document, page);
    }

    /** Something that is printed. */
    @FunctionalInterface
    interface Print {
        void perform() throws IOException;
    }

    PDPage page() {
        return page;
    }

    /** The element of each piece of marked content, in their order. */
    COSArray tagged() {
        return tagged;
    }

    /** Prints content that belongs to a tag; the content's number is that of {@link #tagged} before. */
    void content(String tag, Print print) throws IOException {
        COSDictionary number = new COSDictionary();
        number.setInt(COSName.MCID, tagged.size());
        stream.beginMarkedContent(COSName.getPDFName(tag), PDPropertyList.create(number));
        print.perform();
        stream.endMarkedContent();
    }

    /** Prints what is only for the eye. */
    void aside(Print print) throws IOException {
        stream.beginMarkedContent(COSName.ARTIFACT);
        print.perform();
        stream.endMarkedContent();
    }

    /** One line of text whose letters stand on {@code y}. */
    void line(String text, float x, float y, boolean bold, float size, Color colour) throws IOException {
        stream.beginText();
        stream.setFont(letters.font(bold), size);
        stream.setNonStrokingColor(colour);
        stream.newLineAtOffset(x, HEIGHT - y);
        stream.showText(text);
        stream.endText();
    }

    /** A filled box. */
    void bar(float x, float y, float width, float height, Color colour) throws IOException {
        stream.setNonStrokingColor(colour);
        stream.addRect(x, HEIGHT - y - height, width, height);
        stream.fill();
    }

    /** A picture whose own size is scaled. */
    void picture(PDFormXObject form, float x, float y, float height, float scale) throws IOException {
        stream.saveGraphicsState();
        stream.transform(new Matrix(scale, 0, 0, scale, x, HEIGHT - y - height));
        stream.drawForm(form);
        stream.restoreGraphicsState();
    }

    void close() throws IOException {
        stream.close();
    }
}

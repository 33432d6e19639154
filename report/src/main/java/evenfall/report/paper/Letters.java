package evenfall.report.paper;

import evenfall.report.chart.Typeface;
import evenfall.report.words.Ties;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The bundled typeface in one document: how wide text is and where its lines break. */
final class Letters {

    /** Stands for a letter the typeface does not have. */
    private static final char UNKNOWN = '\u25A1';

    private static final float UNITS = 1000f;

    private final PDFont regular;
    private final PDFont bold;

    Letters(PDDocument document) throws IOException {
        regular = load(document, Typeface.REGULAR);
        bold = load(document, Typeface.BOLD);
    }

    private static PDFont load(PDDocument document, Typeface face) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.bytes()));
        // Joined letters, such as fi, would no longer be found when somebody searches for a word.
        font.setEnableGsub(false);
        return PDType0Font.load(document, font, true);
    }

    PDFont font(boolean heavy) {
        return heavy ? bold : regular;
    }

    /** Width of one line, pt. */
    float width(String text, boolean heavy, float size) throws IOException {
        return font(heavy).getStringWidth(text) / UNITS * size;
    }

    /** The text in lines no wider than {@code width}, broken at spaces, and within words only where a word is wider. */
    List<String> lines(String text, boolean heavy, float size, float width) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String tied : Ties.tied(known(text)).split(" ", -1)) {
            String word = Ties.loose(tied);
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, heavy, size) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            while (width(rest, heavy, size) > width && rest.codePointCount(0, rest.length()) > 1) {
                int fits = fitting(rest, heavy, size, width);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** How many chars of a word fit, at least one letter. */
    private int fitting(String word, boolean heavy, float size, float width) throws IOException {
        int fits = word.offsetByCodePoints(0, 1);
        int next = fits;
        while (next < word.length()) {
            next = word.offsetByCodePoints(next, 1);
            if (width(word.substring(0, next), heavy, size) > width) {
                return fits;
            }
            fits = next;
        }
        return fits;
    }

    /** The text with line ends as spaces and a box for each letter that the typeface does not have. */
    String known(String text) {
        StringBuilder known = new StringBuilder();
        text.codePoints().forEach(letter -> {
            if (Character.isWhitespace(letter) || Character.isISOControl(letter)) {
                known.append(' ');
            } else if (has(letter)) {
                known.appendCodePoint(letter);
            } else {
                known.append(UNKNOWN);
            }
        });
        return known.toString();
    }

    private boolean has(int letter) {
        try {
            return regular.encode(Character.toString(letter)).length > 0
                    && bold.encode(Character.toString(letter)).length > 0;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }
}

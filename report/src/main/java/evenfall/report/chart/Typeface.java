package evenfall.report.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The bundled typeface, so that charts come out the same on every machine and pages can carry it with them.
 *
 * <p>Licence and origin lie beside the files, in {@code font/LICENCE.txt}.
 */
public final class Typeface {

    /** For text. */
    public static final Typeface REGULAR = new Typeface("font/regular.ttf", Font.PLAIN);

    /** For what stands out. */
    public static final Typeface BOLD = new Typeface("font/bold.ttf", Font.BOLD);

    private final String file;
    private final Font font;

    private Typeface(String file, int style) {
        this.file = file;
        try (InputStream in = open(file)) {
            // The style changes no letter; it tells drawings that become markup to ask for the bold face.
            font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(style);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font " + file + " is damaged", e);
        }
    }

    /** The font file's bytes (TrueType). */
    public byte[] bytes() {
        try (InputStream in = open(file)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The name under which a drawing asks for it. */
    public String name() {
        return font.getFontName();
    }

    /** The face so large, px. */
    public Font size(float pixels) {
        return font.deriveFont(pixels);
    }

    private static InputStream open(String file) throws IOException {
        InputStream in = Typeface.class.getResourceAsStream(file);
        if (in == null) {
            throw new IOException("the bundled font " + file + " is missing");
        }
        return in;
    }
}

package evenfall.report.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import evenfall.report.chart.Typeface;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/** How the window looks: ground, typeface, size of letters. For the event thread. */
final class Skin {

    private static final int SMALLEST = 12;
    private static final int USUAL = 17;
    private static final int LARGEST = 34;

    private boolean dark;
    private int letters = USUAL;

    /** Dresses the program; before the first component is made. */
    void wear() {
        register(Typeface.REGULAR);
        String family = register(Typeface.BOLD);
        FlatLaf.setPreferredFontFamily(family);
        dress();
    }

    Palette palette() {
        return dark ? Palette.DARK : Palette.LIGHT;
    }

    boolean dark() {
        return dark;
    }

    void dark(boolean wanted) {
        dark = wanted;
        dress();
        FlatLaf.updateUI();
    }

    /** Larger or smaller letters. */
    void zoom(int steps) {
        letters = Math.max(SMALLEST, Math.min(LARGEST, letters + 2 * steps));
        dress();
        FlatLaf.updateUI();
    }

    /** Height of the usual letters, px. */
    int letters() {
        return letters;
    }

    private void dress() {
        Palette colours = palette();
        Map<String, String> defaults = new HashMap<>();
        defaults.put("@background", hex(colours.ground()));
        defaults.put("@foreground", hex(colours.text()));
        defaults.put("@accentColor", hex(colours.left()));
        defaults.put("Button.arc", "14");
        defaults.put("ToggleButton.arc", "14");
        defaults.put("Button.borderColor", hex(colours.quiet()));
        defaults.put("ToggleButton.borderColor", hex(colours.quiet()));
        defaults.put("Button.disabledText", hex(colours.second()));
        defaults.put("ToggleButton.disabledText", hex(colours.second()));
        defaults.put("ToggleButton.selectedBackground", hex(colours.text()));
        defaults.put("ToggleButton.selectedForeground", hex(colours.ground()));
        defaults.put("Button.default.background", hex(dark ? colours.left() : new Color(0x005A8C)));
        defaults.put("Button.default.foreground", dark ? "#000000" : "#ffffff");
        defaults.put("Component.focusWidth", "2");
        defaults.put("ScrollBar.width", "18");
        FlatLaf.setGlobalExtraDefaults(defaults);
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        Font usual = UIManager.getFont("defaultFont");
        UIManager.put("defaultFont", new FontUIResource(usual.deriveFont((float) letters)));
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xFFFFFF);
    }

    private static String register(Typeface face) {
        try {
            Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes()));
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
            return font.getFamily();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font is damaged", e);
        }
    }
}

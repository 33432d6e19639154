package evenfall.report.window;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.AbstractButton;

/** Writes on a key which key of the keyboard presses it, where there is room; its description says it anyway. */
final class KeyHint {

    private static final int AIR = 8;
    private static final float SIZE = 0.62f;

    private KeyHint() {}

    static void paint(AbstractButton button, Graphics graphics) {
        Object key = button.getClientProperty("evenfall.key");
        if (key == null) {
            return;
        }
        Font usual = button.getFont().deriveFont(Font.PLAIN);
        Font small = usual.deriveFont(Math.max(10f, Math.min(14f, usual.getSize2D() * SIZE)));
        FontMetrics metrics = button.getFontMetrics(small);
        FontMetrics words = button.getFontMetrics(button.getFont());
        String text = key.toString();
        int width = metrics.stringWidth(text);
        int free = (button.getWidth() - words.stringWidth(button.getText())) / 2 - AIR;
        boolean beside = free > width + 6;
        boolean above = button.getHeight() - words.getHeight() > 2 * metrics.getHeight();
        if (!(beside || above) || button.getWidth() < width + 2 * AIR) {
            return;
        }
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setFont(small);
        pen.setColor(button.getForeground());
        pen.drawString(text, button.getWidth() - width - AIR, AIR - 2 + metrics.getAscent());
        pen.dispose();
    }
}

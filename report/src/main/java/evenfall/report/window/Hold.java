package evenfall.report.window;

import java.awt.Graphics;
import javax.swing.JToggleButton;

/** A large key that stays pressed. */
final class Hold extends JToggleButton {

    private static final long serialVersionUID = 1L;

    Hold(String text, Runnable action) {
        super(text);
        addActionListener(e -> action.run());
        putClientProperty("FlatLaf.style", "font: bold 105%; margin: 8,10,8,10");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        KeyHint.paint(this, graphics);
    }
}

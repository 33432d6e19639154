package evenfall.report.window;

import java.awt.Graphics;
import javax.swing.JButton;

/** A large key for gloved fingers. */
final class Press extends JButton {

    private static final long serialVersionUID = 1L;

    Press(String text, Runnable action) {
        super(text);
        addActionListener(e -> action.run());
        putClientProperty("FlatLaf.style", "font: bold 110%; margin: 8,14,8,14");
    }

    /** As large as what it stands for. */
    Press large() {
        putClientProperty("FlatLaf.style", "font: bold 150%; margin: 14,20,14,20");
        return this;
    }

    /** For what is seldom needed. */
    Press small() {
        putClientProperty("FlatLaf.style", "margin: 6,10,6,10");
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        KeyHint.paint(this, graphics);
    }
}

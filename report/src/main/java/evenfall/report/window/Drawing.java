package evenfall.report.window;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Something drawn; the words say the same to those who cannot see it. */
abstract class Drawing extends JComponent {

    private static final long serialVersionUID = 1L;

    private final transient Skin skin;

    Drawing(Skin skin, String name, int width, int height) {
        this.skin = skin;
        setPreferredSize(new Dimension(width, height));
        setMinimumSize(new Dimension(width / 2, height / 2));
        Keys.describe(this, name, Keys.WORDS.say(name + ".about"));
    }

    Palette palette() {
        return skin.palette();
    }

    /** Says in words what is drawn. */
    void says(String words) {
        getAccessibleContext().setAccessibleDescription(words);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setFont(javax.swing.UIManager.getFont("defaultFont"));
        draw(pen);
        pen.dispose();
    }

    abstract void draw(Graphics2D pen);
}

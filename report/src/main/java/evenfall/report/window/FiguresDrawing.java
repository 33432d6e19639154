package evenfall.report.window;

import evenfall.report.session.SessionLanding;
import java.awt.Graphics2D;
import org.jspecify.annotations.Nullable;

/** The three line figures of a landing: from above, from behind, from the side. */
final class FiguresDrawing extends Drawing {

    private static final long serialVersionUID = 1L;

    private transient @Nullable SessionLanding landing;

    FiguresDrawing(Skin skin, String name) {
        super(skin, name, 420, 190);
    }

    @SuppressWarnings("ReferenceEquality") // Asks whether it is the very one that is drawn.
    void show(@Nullable SessionLanding now) {
        if (now != landing) {
            landing = now;
            repaint();
        }
    }

    @Override
    void draw(Graphics2D pen) {}
}

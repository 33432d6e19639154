package evenfall.report.paper;

import java.awt.Graphics2D;

/** Something drawn with lines, not dots. */
public interface Drawing {

    /** Its own width, px; it is scaled to the width it gets. */
    int width();

    /** Its own height, px. */
    int height();

    /** What it shows, for those who cannot see it. */
    String words();

    /** Draws it, from (0, 0) to its width and height. */
    void draw(Graphics2D graphics);
}

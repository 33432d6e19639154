package evenfall.report.paper;

import java.awt.Color;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/**
 * How a paragraph looks and what it is.
 *
 * @param tag its role for those who listen, as the standard names it
 * @param bold whether its letters are bold
 * @param size of its letters, pt
 * @param colour of its letters; at least 4.5:1 on white
 * @param above empty space above, pt
 * @param ruled whether a line at its left side sets it off
 */
public record TextStyle(String tag, boolean bold, float size, Color colour, float above, boolean ruled) {

    private static final Color DARK = new Color(0x1F1F1F);
    private static final Color GREY = new Color(0x5A5A5A);

    /** Running text. */
    public static final TextStyle PLAIN = new TextStyle(StandardStructureTypes.P, false, 10, DARK, 4, false);

    /** Running text where there is room for it. */
    public static final TextStyle LARGE = new TextStyle(StandardStructureTypes.P, false, 12, DARK, 6, false);

    /** The sentence a page begins with. */
    public static final TextStyle SENTENCE = new TextStyle(StandardStructureTypes.P, false, 14, DARK, 8, false);

    /** Second to the rest. */
    public static final TextStyle QUIET = new TextStyle(StandardStructureTypes.P, false, 9, GREY, 3, false);

    /** To be heeded. */
    public static final TextStyle CAUTION = new TextStyle(StandardStructureTypes.P, false, 10, DARK, 4, true);

    /** To be heeded before anything else. */
    public static final TextStyle URGENT = new TextStyle(StandardStructureTypes.P, true, 11, DARK, 5, true);

    /** The style of a heading; level 1 to 3. */
    static TextStyle heading(int level) {
        return switch (level) {
            case 1 -> new TextStyle(StandardStructureTypes.H1, true, 18, DARK, 0, false);
            case 2 -> new TextStyle(StandardStructureTypes.H2, true, 13, DARK, 16, false);
            case 3 -> new TextStyle(StandardStructureTypes.H3, true, 10.5f, DARK, 10, false);
            default -> throw new IllegalArgumentException("headings have levels 1 to 3, not " + level);
        };
    }

    /** From the top of one line to the top of the next, pt. */
    float line() {
        return 1.35f * size;
    }

    boolean isHeading() {
        return tag.startsWith("H");
    }
}

package evenfall.report.chart;

import evenfall.fusion.landing.Side;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Stroke;
import org.jspecify.annotations.Nullable;

/** Every colour, line and letter size of the charts. Lengths are in the drawing's own pixels. */
final class Ink {

    static final Color LEFT = new Color(0x0072B2);
    static final Color RIGHT = new Color(0xD55E00);
    static final Color BOTH = new Color(0x3A3A3A);

    /** Letters in the colour of the right foot: a little darker than its marks, so that they reach 4.5:1 on white. */
    private static final Color RIGHT_LETTER = new Color(0xB24E00);

    /** Text and the leading line of a chart. */
    static final Color DARK = new Color(0x1F1F1F);
    /** Second lines and secondary text; 4.5:1 and more on white. */
    static final Color GREY = new Color(0x626262);

    static final Color HAIRLINE = new Color(0xDDDDDD);
    static final Color ZERO = new Color(0x8C8C8C);

    /** What lies behind and is looked at together, not one by one; 3:1 on white. */
    static final Color CROWD = new Color(0x949494);

    /** The band of the measurement's own error. */
    static final Color BAND = new Color(0xD8D8D8);

    static final Paint NONE = new Color(0, 0, 0, 0);

    static final Font TEXT = Typeface.REGULAR.size(13);
    static final Font SMALL = Typeface.REGULAR.size(12);
    static final Font BOLD = Typeface.BOLD.size(13);

    static final Stroke THIN = new BasicStroke(1f);
    static final Stroke LEADING = new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    static final Stroke SECOND =
            new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {5f, 3f}, 0f);
    /** The outline of a landing's sign; the same in {@code DASHED_SIGN} where form was not judged. */
    static final Stroke SIGN = new BasicStroke(1.8f);

    static final Stroke DASHED_SIGN =
            new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, new float[] {2f, 2f}, 0f);
    static final Stroke FAINT = new BasicStroke(0.8f);
    static final Stroke BONE = new BasicStroke(4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    static final Stroke MOMENT =
            new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {2f, 2f}, 0f);

    private Ink() {}

    /** The colour of a landing's foot; grey where the foot is not known. */
    static Color of(@Nullable Side side) {
        if (side == null) {
            return GREY;
        }
        return switch (side) {
            case LEFT -> LEFT;
            case RIGHT -> RIGHT;
            case BOTH -> BOTH;
        };
    }

    /** The colour of letters that name a foot. */
    static Color letter(@Nullable Side side) {
        return side == Side.RIGHT ? RIGHT_LETTER : of(side);
    }

    /** A colour as SVG writes it. */
    static String hex(Color colour) {
        // A digit in front keeps the zeros; a pattern would be read anew for each of thousands.
        return "#"
                + Integer.toHexString(0x1000000 | (colour.getRGB() & 0xFFFFFF)).substring(1);
    }
}

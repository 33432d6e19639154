package evenfall.report.window;

import evenfall.fusion.landing.Side;
import java.awt.Color;
import org.jspecify.annotations.Nullable;

/**
 * The colours of light and of dark ground. Left and right are told by shape and letter too, and never by red and green.
 *
 * @param ground behind everything
 * @param text for reading
 * @param second for what comes second; still for reading
 * @param quiet lines of the quiet stance, frames: seen, not read
 * @param left marks of the left foot
 * @param right marks of the right foot
 * @param rightLetter letters that name the right foot
 * @param both marks of both feet
 * @param alarm ground of what must be seen at once
 * @param alarmText on that ground
 */
record Palette(
        Color ground,
        Color text,
        Color second,
        Color quiet,
        Color left,
        Color right,
        Color rightLetter,
        Color both,
        Color alarm,
        Color alarmText) {

    static final Palette LIGHT = new Palette(
            new Color(0xFFFFFF),
            new Color(0x1F1F1F),
            new Color(0x595959),
            new Color(0x8C8C8C),
            new Color(0x0072B2),
            new Color(0xD55E00),
            new Color(0xB24E00),
            new Color(0x3A3A3A),
            new Color(0xFFE08A),
            new Color(0x1F1F1F));

    static final Palette DARK = new Palette(
            new Color(0x161718),
            new Color(0xF0F0F0),
            new Color(0xB8B8B8),
            new Color(0x7A7A7A),
            new Color(0x2E9BDA),
            new Color(0xE8792B),
            new Color(0xE8792B),
            new Color(0xC8C8C8),
            new Color(0xFFD65C),
            new Color(0x161718));

    /** The colour of letters that name a foot. */
    Color letter(Side side) {
        return side == Side.RIGHT ? rightLetter : of(side);
    }

    /** The colour of a foot's marks. */
    Color of(@Nullable Side side) {
        return side == Side.LEFT ? left : side == Side.RIGHT ? right : both;
    }
}

package evenfall.report.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.Side;
import java.awt.Color;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast as the Web Content Accessibility Guidelines 2.2 define it (1.4.3 for text, 1.4.11 for marks). */
final class PaletteTest {

    private static final double TEXT = 4.5;
    private static final double MARKS = 3;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void textAndMarks_standOutFromTheGround(boolean dark) {
        Palette palette = dark ? Palette.DARK : Palette.LIGHT;
        for (Color text :
                List.of(palette.text(), palette.second(), palette.letter(Side.LEFT), palette.letter(Side.RIGHT))) {
            assertThat(contrast(text, palette.ground())).isGreaterThanOrEqualTo(TEXT);
        }
        assertThat(contrast(palette.alarmText(), palette.alarm())).isGreaterThanOrEqualTo(TEXT);
        for (Color mark : List.of(palette.left(), palette.right(), palette.both(), palette.quiet())) {
            assertThat(contrast(mark, palette.ground())).isGreaterThanOrEqualTo(MARKS);
        }
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}

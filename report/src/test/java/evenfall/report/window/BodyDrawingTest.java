package evenfall.report.window;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.round.BodyPart;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every place that has a name can be pressed on the drawn body, and left lies left of right. */
final class BodyDrawingTest {

    private static final int WIDTH = 456;
    private static final int HEIGHT = 540;

    private final List<String> pressed = new ArrayList<>();
    private final BodyDrawing body = new BodyDrawing(new Skin(), "feel.body", pressed::add);

    BodyDrawingTest() {
        body.setSize(WIDTH, HEIGHT);
    }

    @Test
    void everyNamedPlace_isOnIt_leftLeftOfRight() {
        Map<String, Double> middles = middles();
        List<String> named = new ArrayList<>();
        for (String name : BodyPart.PAIRED) {
            String left = BodyPart.left(name).code();
            String right = BodyPart.right(name).code();
            named.addAll(List.of(left, right));
            assertThat(middles.get(left)).as(name).isLessThan(middles.get(right));
        }
        BodyPart.SINGLE.forEach(part -> named.add(part.code()));

        assertThat(middles).containsOnlyKeys(named);
    }

    @Test
    void aPress_namesThePlaceBelowIt_andBesideTheBodyNothing() {
        press(2, 2);
        assertThat(pressed).isEmpty();
        for (int y = 0; y < HEIGHT && pressed.isEmpty(); y++) {
            press(y % 7 + 85, y);
        }
        assertThat(pressed).isNotEmpty();
    }

    /** Drawn with and without a number it looks different where the place is, and nowhere else. */
    @Test
    void aNumber_isDrawnAtItsPlace_andPainUnlikeSoreness() {
        BufferedImage plain = drawn(Map.of(), Map.of());
        BufferedImage sore = drawn(Map.of("left knee", 4), Map.of());
        BufferedImage hurts = drawn(Map.of(), Map.of("left knee", 4));

        assertThat(differing(plain, sore)).isNotEmpty().allMatch("left knee"::equals);
        assertThat(differing(sore, hurts)).isNotEmpty();
    }

    private BufferedImage drawn(Map<String, Integer> sore, Map<String, Integer> hurts) {
        body.show(null, sore, hurts);
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        body.paint(image.getGraphics());
        return image;
    }

    /** The places nearest to the points that differ. */
    private List<String> differing(BufferedImage one, BufferedImage other) {
        List<String> places = new ArrayList<>();
        for (int x = 0; x < WIDTH; x++) {
            for (int y = 0; y < HEIGHT; y++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    places.add(String.valueOf(body.at(x, y)));
                }
            }
        }
        return places;
    }

    private void press(int x, int y) {
        body.dispatchEvent(new MouseEvent(body, MouseEvent.MOUSE_PRESSED, 0, 0, x, y, 1, false));
    }

    private Map<String, Double> middles() {
        Map<String, List<Integer>> found = new TreeMap<>();
        for (int x = 0; x < WIDTH; x++) {
            for (int y = 0; y < HEIGHT; y++) {
                String place = body.at(x, y);
                if (place != null) {
                    found.computeIfAbsent(place, key -> new ArrayList<>()).add(x);
                }
            }
        }
        Map<String, Double> middles = new TreeMap<>();
        found.forEach((place, xs) -> middles.put(
                place, xs.stream().mapToInt(Integer::intValue).average().orElse(0)));
        return middles;
    }
}

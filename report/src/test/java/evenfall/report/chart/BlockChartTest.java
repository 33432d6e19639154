package evenfall.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.chart.BlockChart.Feeling;
import evenfall.report.chart.BlockChart.Saying;
import evenfall.report.chart.BlockChart.Sense;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the diary holds is named whole, within the picture and not over one another, wide and narrow. */
class BlockChartTest {

    private static final long SEED = 11;
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);
    private static final LocalDate LAST = LocalDate.of(2026, 5, 11);
    private static final Pattern TEXT =
            Pattern.compile("<text[^>]* x=\"([-0-9.]+)\" y=\"([-0-9.]+)\"[^>]*>([^<]*)</text>");

    /** Letters that touch by a hair are still read; px. */
    private static final double HAIR = 1;

    @ParameterizedTest
    @ValueSource(ints = {420, 1100})
    void everySoreOrPainfulPlace_isNamed_withItsLargestValue(int width) {
        List<Feeling> feelings = new ArrayList<>();
        for (int day = 0; day < 60; day += 3) {
            feelings.add(new Feeling(FIRST.plusDays(day), Sense.SORENESS, 1, "thighs"));
            feelings.add(new Feeling(FIRST.plusDays(day), Sense.SORENESS, 2, "right calf"));
        }
        feelings.add(new Feeling(FIRST.plusDays(30), Sense.SORENESS, 6, "right calf"));
        feelings.add(new Feeling(FIRST.plusDays(30), Sense.PAIN, 4, "left ankle"));
        feelings.add(new Feeling(FIRST.plusDays(31), Sense.PAIN, 3, "left ankle"));
        feelings.add(new Feeling(FIRST.plusDays(31), Sense.SORENESS, 0, "neck"));

        List<Text> texts = texts(new BlockChart(width, FIRST, LAST).feelings("Soreness", feelings), width);

        assertThat(texts.stream().map(Text::words))
                .containsSubsequence(
                        "left ankle: pain up to 4 of 10",
                        "right calf: soreness up to 6 of 10",
                        "thighs: soreness up to 1 of 10")
                .contains("6", "4")
                .noneMatch(words -> words.contains("neck"));
        assertThat(texts.stream().filter(text -> text.words().equals("1"))).hasSize(20);
    }

    @ParameterizedTest
    @ValueSource(ints = {420, 1100})
    void largestValues_haveRoom_inEveryPlace(int width) {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Feeling> feelings = new ArrayList<>();
        for (int place = 0; place < 9; place++) {
            for (int day = 0; day < 60; day++) {
                Sense sense = random.nextBoolean() ? Sense.PAIN : Sense.SORENESS;
                feelings.add(new Feeling(FIRST.plusDays(day), sense, random.nextInt(11), "place " + place));
            }
        }

        List<Text> texts = texts(new BlockChart(width, FIRST, LAST).feelings("Soreness", feelings), width);

        assertThat(texts.stream().filter(text -> text.words().startsWith("place ")))
                .hasSize(9);
        assertThat(texts.stream().filter(text -> text.words().equals("10"))).hasSizeGreaterThanOrEqualTo(9);
    }

    @ParameterizedTest
    @ValueSource(ints = {420, 1100})
    void everyCue_standsWhole_howeverLateOrLong(int width) {
        String wide = "land quietly, ribs level, both sides long, chest over the middle of the feet, "
                + "and look at the far wall until the count of three is over";
        String unbroken = "x".repeat(300);
        List<String> cues = List.of("one", wide, "a cue of the last day but one", unbroken, "late", wide);
        List<Saying> sayings = new ArrayList<>();
        for (int i = 0; i < cues.size(); i++) {
            sayings.add(new Saying(LAST.minusDays(2L * (cues.size() - 1 - i)), cues.get(i)));
        }

        List<Text> texts = texts(new BlockChart(width, FIRST, LAST).words("Cue in force", sayings), width);

        String all = String.join("", texts.stream().map(Text::words).toList()).replace(" ", "");
        assertThat(all).contains(String.join("", cues).replace(" ", ""));
    }

    @Test
    void aWordThatIsLongerThanALine_isBroken_andNothingIsLost() {
        String text = "a " + "w".repeat(90) + " b \uD83D\uDE00" + "\uD83D\uDE00".repeat(40);
        List<String> lines = Plots.lines(Ink.SMALL, text, 100);

        assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
        assertThat(lines).allSatisfy(line -> assertThat(width(line)).isLessThanOrEqualTo(100));
        assertThat(Plots.lines(Ink.SMALL, "ww", 1)).containsExactly("w", "w");
    }

    /** What is written, in the order it is drawn, after a look at where it stands. */
    private static List<Text> texts(BlockChart chart, int width) {
        Picture picture = chart.draw("chart", "a chart");
        List<Text> texts = new ArrayList<>();
        Matcher matcher = TEXT.matcher(picture.markup());
        while (matcher.find()) {
            Text text = new Text(
                    Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2)), matcher.group(3));
            assertThat(text.box().getMinX()).as(text.words()).isGreaterThanOrEqualTo(0);
            assertThat(text.box().getMaxX()).as(text.words()).isLessThanOrEqualTo(width);
            assertThat(text.y()).as(text.words()).isBetween(0.0, (double) picture.height());
            assertThat(texts)
                    .as("what stands under %s", text.words())
                    .noneMatch(other -> other.box().intersects(text.box()));
            texts.add(text);
        }
        assertThat(texts).isNotEmpty();
        return texts;
    }

    private static double width(String text) {
        return Ink.SMALL
                .getStringBounds(text, new FontRenderContext(null, true, true))
                .getWidth();
    }

    /** Words and the left end of their baseline, px. */
    private record Text(double x, double y, String words) {

        /** What the letters without tails cover. */
        Rectangle2D box() {
            return new Rectangle2D.Double(x + HAIR, y - 8, Math.max(1, width(words) - 2 * HAIR), 8);
        }
    }
}

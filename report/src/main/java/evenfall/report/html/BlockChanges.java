package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BothFeet;
import evenfall.report.block.Chances;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionMedian;
import evenfall.report.block.Sides;
import evenfall.report.block.Tiring;
import evenfall.report.block.Trend;
import evenfall.report.chart.DifferenceChart;
import evenfall.report.glossary.Glossary;
import evenfall.report.statistics.Interval;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;

/**
 * What changed over a block and what differs between the feet, in words. Something is called a change only where its own
 * verdict says so and where it stands among all that was looked at; else it is named as not clear, or as not known yet.
 */
final class BlockChanges {

    private static final Words WORDS = Words.beside(BlockChanges.class);

    private static final List<Figure> FIGURES = FigureList.GROUPS.stream()
            .flatMap(group -> group.figures().stream())
            .filter(figure -> !figure.equals(FigureList.STEPS))
            .toList();

    /** Share of the sessions. */
    private static final double NEARLY_ALL = 0.9;

    private final Block block;

    BlockChanges(Block block) {
        this.block = block;
    }

    /** Whether anything is told of a measure besides that nothing is clear. */
    boolean isTold(String measure) {
        MeasureCourse course = block.measures().get(measure);
        return course != null && (isTrend(course) || isSided(course) || isBiased(course));
    }

    /** Over the weeks, at equal height and foot. */
    List<String> weeks() {
        List<String> lines = new ArrayList<>();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            if (course != null && isTrend(course)) {
                Trend trend = course.trend();
                lines.add(moves(figure, course, value(trend.perWeek()), value(trend.low()), value(trend.high())));
            }
        }
        lines.addAll(rest(
                "weeks",
                lines.isEmpty(),
                (figure, course) ->
                        !isTrend(course) && !course.trend().verdict().equals(Trend.TOO_FEW),
                (figure, course) -> course.trend().verdict().equals(Trend.TOO_FEW)));
        return lines;
    }

    /** Within sessions, with the number of the landing. */
    List<String> tiring() {
        List<String> lines = new ArrayList<>();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            Tiring tiring = course == null ? null : course.tiring();
            if (course == null || tiring == null || tiring.overSession() == null || !isTiring(course)) {
                continue;
            }
            lines.add(WORDS.say(
                    "tiring." + direction(figure, course, tiring.overSession()),
                    Glossary.name(figure.term()),
                    size(figure, tiring.overSession()),
                    String.valueOf(tiring.landings()),
                    side(figure, course, tiring.overSession())));
        }
        if (lines.isEmpty()) {
            lines.add(WORDS.say("tiring.none"));
        }
        return lines;
    }

    /** Left against right, and what two feet do. */
    List<String> sides() {
        List<String> lines = new ArrayList<>();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            if (course != null && isSided(course)) {
                lines.add(sides(figure, course));
            }
        }
        boolean none = lines.isEmpty();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            BothFeet both = course == null ? null : course.bothFeet();
            Double median = both == null ? null : both.median();
            if (course != null && median != null && isBiased(course)) {
                lines.add(WORDS.say("both", lower(Glossary.name(figure.term())), FigureWords.words(figure, median)));
            }
        }
        lines.addAll(rest(
                "sides",
                none,
                (figure, course) ->
                        !isSided(course) && !course.sides().verdict().equals(Trend.TOO_FEW),
                (figure, course) -> course.sides().verdict().equals(Trend.TOO_FEW)));
        return lines;
    }

    /** The pairs that can be drawn on one scale: every angle that has a side, where there is an interval. */
    List<DifferenceChart.Row> pairs() {
        List<DifferenceChart.Row> rows = new ArrayList<>();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            if (course == null || course.bothFeet() == null || !figure.unit().equals("unit.degrees")) {
                continue;
            }
            Sides sides = course.sides();
            Interval interval = sides.interval();
            Double left = sides.left().median();
            Double right = sides.right().median();
            if (left != null && right != null && sides.difference() != null && interval != null) {
                rows.add(new DifferenceChart.Row(
                        Glossary.name(figure.term()),
                        left,
                        right,
                        sides.difference(),
                        interval.low(),
                        interval.high(),
                        course.mdc95()));
            }
        }
        return rows;
    }

    private List<String> rest(
            String about,
            boolean none,
            BiPredicate<Figure, MeasureCourse> unclear,
            BiPredicate<Figure, MeasureCourse> unknown) {
        List<String> lines = new ArrayList<>();
        String unclearNames = names(unclear);
        String unknownNames = names(unknown);
        if (!unclearNames.isEmpty()) {
            lines.add(WORDS.say(about + (none ? ".unclear.all" : ".unclear"), unclearNames));
        }
        if (!unknownNames.isEmpty()) {
            lines.add(WORDS.say(about + ".unknown", unknownNames));
        }
        return lines;
    }

    private String names(BiPredicate<Figure, MeasureCourse> which) {
        List<String> names = new ArrayList<>();
        for (Figure figure : FIGURES) {
            MeasureCourse course = course(figure);
            if (course != null && which.test(figure, course)) {
                names.add(lower(Glossary.name(figure.term())));
            }
        }
        return String.join(", ", names);
    }

    private @Nullable MeasureCourse course(Figure figure) {
        return block.measures().get(figure.measure());
    }

    private static boolean isTrend(MeasureCourse course) {
        String verdict = course.trend().verdict();
        return (verdict.equals(Trend.RISING) || verdict.equals(Trend.FALLING))
                && course.trend().perWeek() != null
                && Chances.stands(course.chances().trend());
    }

    private static boolean isTiring(MeasureCourse course) {
        String verdict = course.tiring().verdict();
        return (verdict.equals(Trend.RISING) || verdict.equals(Trend.FALLING))
                && Chances.stands(course.chances().tiring());
    }

    private static boolean isSided(MeasureCourse course) {
        Sides sides = course.sides();
        return sides.difference() != null
                && !sides.verdict().equals(Sides.NO_CLEAR_DIFFERENCE)
                && !sides.verdict().equals(Trend.TOO_FEW)
                && Chances.stands(course.chances().sides());
    }

    private static boolean isBiased(MeasureCourse course) {
        BothFeet both = course.bothFeet();
        return both != null
                && !both.verdict().equals(BothFeet.EVEN)
                && !both.verdict().equals(Trend.TOO_FEW)
                && Chances.stands(course.chances().bothFeet());
    }

    private static String sides(Figure figure, MeasureCourse course) {
        Sides sides = course.sides();
        double difference = value(sides.difference());
        Interval interval = sides.interval();
        String phrase = WORDS.say("more." + figure.term().code());
        String size = size(figure, difference);
        String range = interval == null ? "" : range(figure, interval.low(), interval.high());
        return WORDS.say(
                difference > 0 ? "sides.clear.left" : "sides.clear.right",
                phrase,
                size,
                range,
                size(figure, value(course.mdc95())));
    }

    private static String moves(Figure figure, MeasureCourse course, double value, double low, double high) {
        return WORDS.say(
                "weeks." + direction(figure, course, value),
                Glossary.name(figure.term()),
                size(figure, value),
                range(figure, low, high),
                side(figure, course, value));
    }

    /** Sizes of both ends, the smaller first. */
    private static String range(Figure figure, double low, double high) {
        return WORDS.say(
                "range",
                size(figure, Math.min(Math.abs(low), Math.abs(high))),
                size(figure, Math.max(Math.abs(low), Math.abs(high))));
    }

    /** Of a measure that lies on one side of zero, less or more to that side; only one that crosses it moves. */
    private static String direction(Figure figure, MeasureCourse course, double value) {
        if (!figure.sided()) {
            return value > 0 ? "rises" : "falls";
        }
        double lies = sideOfZero(course);
        return lies == 0 ? "moves" : lies * value > 0 ? "more" : "less";
    }

    private static String side(Figure figure, MeasureCourse course, double value) {
        double lies = sideOfZero(course);
        String key = (lies == 0 ? value : lies) > 0 ? figure.plus() : figure.minus();
        return key == null ? "" : WORDS.say((lies == 0 ? "to." : "far.") + key);
    }

    /** 1 or -1 where nearly all sessions have their median on that side of zero, else 0. */
    private static double sideOfZero(MeasureCourse course) {
        return sideOfZero(
                course.sessions().stream().mapToDouble(SessionMedian::median).toArray());
    }

    /** 1 or -1 where nearly all values lie on that side of zero, else 0. */
    static double sideOfZero(double[] medians) {
        double sum = Arrays.stream(medians).map(Math::signum).sum();
        // One session a hair beyond zero does not make a lean to the right one that moves to the left.
        return Math.abs(sum) < 2 * (NEARLY_ALL - 0.5) * medians.length ? 0 : Math.signum(sum);
    }

    /** A size with its unit: one decimal more where the value's own would leave less than two digits. */
    private static String size(Figure figure, double value) {
        boolean few = Math.abs(value) < Math.pow(10, 1 - figure.decimals());
        int decimals = figure.decimals() + (few && figure.decimals() < 2 ? 1 : 0);
        return WORDS.say(figure.unit(), Figures.size(value, decimals));
    }

    private static double value(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    private static String lower(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}

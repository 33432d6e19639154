package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.HeightAgreement;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.Needed;
import evenfall.report.block.Science;
import evenfall.report.block.WithinDay;
import evenfall.report.csv.PlainNumber;
import evenfall.report.words.Figures;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The scientist's table of a block: errors and second opinions, by which nothing is called a change. */
public final class ScienceText {

    private static final Words WORDS = Words.beside(ScienceText.class);

    private ScienceText() {}

    /**
     * Writes it.
     *
     * @param needed what differences that somebody stated would need
     */
    public static void write(Block block, List<Needed> needed, Appendable out) throws IOException {
        out.append('\n').append(WORDS.say("science.title")).append('\n');
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("science.measure"),
                WORDS.say("science.unit"),
                WORDS.say("science.error"),
                WORDS.say("science.mdc"),
                WORDS.say("science.percent"),
                WORDS.say("science.icc"),
                WORDS.say("science.single"),
                WORDS.say("science.kendall"),
                WORDS.say("science.bend"),
                WORDS.say("science.feet"),
                WORDS.say("science.needed"));
        for (Map.Entry<String, MeasureCourse> measure : block.measures().entrySet()) {
            row(grid, measure.getKey(), measure.getValue());
        }
        grid.write(out);
        HeightAgreement heights = HeightAgreement.of(block);
        if (heights != null) {
            out.append(WORDS.say(
                            "science.heights",
                            heights.agreement().n(),
                            Figures.fixed(100 * heights.agreement().mean(), 1),
                            Figures.fixed(100 * heights.agreement().limits().low(), 1),
                            Figures.fixed(100 * heights.agreement().limits().high(), 1)))
                    .append('\n');
        }
        for (Needed each : needed) {
            out.append(needed(each)).append('\n');
        }
        out.append(WORDS.say("science.note")).append('\n');
    }

    private static void row(TextGrid grid, String name, MeasureCourse course) {
        Science science = Science.of(course);
        WithinDay day = course.evidence().withinDay();
        Integer needed = course.sides().neededPerSide();
        grid.row(
                name,
                course.unit(),
                figure(course.typicalError()),
                figure(course.mdc95()),
                figure(science.typicalErrorPercent()),
                figure(day == null ? null : Double.valueOf(day.alike().value())),
                figure(day == null ? null : Double.valueOf(day.error())),
                figure(
                        science.kendall() == null
                                ? null
                                : Double.valueOf(science.kendall().chance())),
                science.bend() == null
                        ? Cells.MISSING
                        : science.bendDay() + " " + figure(science.bend().chance()),
                figure(
                        science.feet() == null
                                ? null
                                : Double.valueOf(science.feet().signFlipChance())),
                needed == null ? Cells.MISSING : needed.toString());
    }

    private static String needed(Needed needed) {
        String what = WORDS.say("science.difference", needed.measure(), PlainNumber.of(needed.difference()));
        if (needed.why() != null) {
            what += " " + needed.why();
        }
        Needed.Count feet = needed.feet();
        Needed.Count sessions = needed.sessions();
        if (feet != null && sessions != null) {
            what += " "
                    + WORDS.say(
                            "science.needed.feet",
                            feet.need(),
                            feet.have(),
                            feet.more(),
                            sessions.need(),
                            sessions.have(),
                            sessions.more());
        }
        Integer stretch = needed.stretch();
        return stretch == null ? what : what + " " + WORDS.say("science.needed.stretch", stretch);
    }

    private static String figure(@Nullable Double value) {
        if (value == null) {
            return Cells.MISSING;
        }
        double size = Math.abs(value);
        return Figures.fixed(value, size >= 100 ? 0 : size >= 1 ? 2 : 4);
    }
}

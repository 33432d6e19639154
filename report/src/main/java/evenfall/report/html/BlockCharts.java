package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.BlockSession;
import evenfall.report.block.MeasureCourse;
import evenfall.report.block.SessionFormHeight;
import evenfall.report.block.SessionMedian;
import evenfall.report.chart.BlockChart;
import evenfall.report.chart.BlockChart.Band;
import evenfall.report.chart.BlockChart.Bar;
import evenfall.report.chart.BlockChart.Count;
import evenfall.report.chart.BlockChart.Direction;
import evenfall.report.chart.BlockChart.Feeling;
import evenfall.report.chart.BlockChart.Held;
import evenfall.report.chart.BlockChart.Median;
import evenfall.report.chart.BlockChart.Saying;
import evenfall.report.chart.BlockChart.Sense;
import evenfall.report.chart.Picture;
import evenfall.report.form.Form;
import evenfall.report.log.DiaryEntry;
import evenfall.report.statistics.Medians;
import evenfall.report.weeks.ResultValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The small charts of a block: form's own measures, then what was done, then what the diary says. */
final class BlockCharts {

    static final int WIDE = 1100;
    static final int NARROW = 420;

    private static final Words WORDS = Words.beside(BlockCharts.class);

    /** So many measures are shown: those that changed or differ between the feet first, then these in their order. */
    private static final int MOST = 4;

    private static final List<Shown> SHOWN = List.of(
            new Shown("meanBrakingG", Direction.PLAIN, 1),
            new Shown("pelvicRotationDeg.change", Direction.LEFT_POSITIVE, 0),
            new Shown("trunkLeanDeg.change", Direction.RIGHT_POSITIVE, 0),
            new Shown("overFeetM.foreAftLowest", Direction.BEFORE_POSITIVE, 2),
            new Shown("spineFlexionDeg.change", Direction.FORWARD_POSITIVE, 0),
            new Shown("pelvicObliquityDeg.change", Direction.RIGHT_POSITIVE, 0),
            new Shown("twistDeg.change", Direction.LEFT_POSITIVE, 0),
            new Shown("depthM", Direction.PLAIN, 2),
            new Shown("peakG", Direction.PLAIN, 0),
            new Shown("collapseDegPerS", Direction.PLAIN, 0));

    private static final int MOST_RESULTS = 3;

    private final Block block;
    private final SortedMap<LocalDate, List<DiaryEntry>> diary;

    BlockCharts(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        this.block = block;
        this.diary = diary;
    }

    /** What was measured and done. */
    Picture done(String id, int width, LocalDate from, LocalDate to) {
        BlockChart chart = new BlockChart(width, from, to);
        List<Held> heights = heights();
        if (!heights.isEmpty()) {
            List<Median> formHeights = formHeights();
            chart.heights(
                    WORDS.say(formHeights.isEmpty() ? "panel.heights" : "panel.heights.dotted"), heights, formHeights);
        }
        for (Shown shown : shown()) {
            MeasureCourse course = block.measures().get(shown.measure());
            if (course != null) {
                List<Median> medians = course.sessions().stream()
                        .map(each -> new Median(each.date().day(), each.median(), each.low(), each.high()))
                        .toList();
                chart.medians(
                        WORDS.say("panel." + shown.measure()),
                        shown.direction(),
                        shown.decimals(),
                        medians,
                        band(course));
            }
        }
        if (!block.sessions().isEmpty()) {
            chart.counts(WORDS.say("panel.landings"), counts());
        }
        List<Bar> efforts = efforts();
        if (!efforts.isEmpty()) {
            chart.bars(WORDS.say("panel.effort"), efforts);
        }
        return chart.draw(id, WORDS.say("block.chart"));
    }

    /** What was felt, reached and told; a picture of its own, since it is as high as there are places that were sore. */
    Picture told(String id, int width, LocalDate from, LocalDate to) {
        BlockChart chart = new BlockChart(width, from, to);
        List<Feeling> feelings = feelings();
        if (feelings.stream().anyMatch(feeling -> feeling.size() > 0)) {
            chart.feelings(WORDS.say("panel.feelings"), feelings);
        }
        results()
                .forEach((name, values) ->
                        chart.medians(WORDS.say("panel.result", name), Direction.PLAIN, 0, values, null));
        List<Saying> cues = cues();
        if (!cues.isEmpty()) {
            chart.words(WORDS.say("panel.cues"), cues);
        }
        return chart.isEmpty() ? Picture.NONE : chart.draw(id, WORDS.say("block.chart.diary"));
    }

    private List<Shown> shown() {
        BlockChanges changes = new BlockChanges(block);
        List<Shown> told =
                SHOWN.stream().filter(shown -> changes.isTold(shown.measure())).toList();
        List<Shown> shown = new ArrayList<>(told);
        SHOWN.stream().filter(each -> !told.contains(each)).forEach(shown::add);
        return shown.subList(0, Math.max(told.size(), MOST));
    }

    /** Round the middle of the block, as far as the measurement and the days explain. */
    private static @Nullable Band band(MeasureCourse course) {
        Double mdc = course.mdc95();
        if (mdc == null || course.sessions().isEmpty()) {
            return null;
        }
        double middle = Medians.of(
                course.sessions().stream().mapToDouble(SessionMedian::median).toArray());
        return new Band(middle - mdc / 2, middle + mdc / 2);
    }

    private List<Median> formHeights() {
        List<Median> medians = new ArrayList<>();
        for (SessionFormHeight each : SessionFormHeight.of(block)) {
            Double height = each.height().heightM();
            if (height != null) {
                medians.add(new Median(
                        each.date().day(),
                        height,
                        each.height().low(),
                        each.height().high()));
            }
        }
        return medians;
    }

    /** Countable results by name with what they are counted in, those with the most entries; in order of days. */
    private SortedMap<String, List<Median>> results() {
        SortedMap<String, List<Median>> all = new TreeMap<>();
        diary.forEach((day, entries) -> {
            for (DiaryEntry entry : entries) {
                entry.results()
                        .forEach((name, text) -> ResultValue.of(text)
                                .ifPresent(result -> all.computeIfAbsent(named(name, result), key -> new ArrayList<>())
                                        .add(new Median(day, result.value(), null, null))));
            }
        });
        all.values().removeIf(values -> values.size() < 2);
        while (all.size() > MOST_RESULTS) {
            all.remove(all.entrySet().stream()
                    .min(Comparator.comparingInt(entry -> entry.getValue().size()))
                    .orElseThrow()
                    .getKey());
        }
        return all;
    }

    private static String named(String name, ResultValue result) {
        return result.unit().isEmpty() ? name : name + ", " + result.unit();
    }

    private List<Held> heights() {
        List<Held> heights = new ArrayList<>();
        for (BlockSession session : block.sessions()) {
            SortedMap<Double, List<BlockLanding>> byHeight = new TreeMap<>();
            for (BlockLanding landing : block.landings()) {
                Double height = landing.toldHeightM();
                if (landing.date().equals(session.date()) && height != null && landing.form() != null) {
                    byHeight.computeIfAbsent(height, key -> new ArrayList<>()).add(landing);
                }
            }
            byHeight.forEach((height, landings) -> heights.add(new Held(
                    session.date().day(),
                    height,
                    (int) landings.stream()
                            .filter(landing -> landing.form() == Form.HELD)
                            .count(),
                    landings.size())));
        }
        return heights;
    }

    private List<Count> counts() {
        return block.sessions().stream()
                .map(each -> new Count(each.date().day(), each.left(), each.both(), each.right()))
                .toList();
    }

    private List<Bar> efforts() {
        List<Bar> bars = new ArrayList<>();
        block.sessions().forEach(each -> {
            if (each.effortMinutes() != null) {
                bars.add(new Bar(each.date().day(), each.effortMinutes()));
            }
        });
        return bars;
    }

    private List<Feeling> feelings() {
        List<Feeling> feelings = new ArrayList<>();
        diary.forEach((day, entries) -> {
            for (DiaryEntry entry : entries) {
                entry.soreness()
                        .forEach((region, size) -> feelings.add(new Feeling(day, Sense.SORENESS, size, region)));
                entry.pain().forEach((region, size) -> feelings.add(new Feeling(day, Sense.PAIN, size, region)));
            }
        });
        feelings.sort((a, b) -> a.region().compareTo(b.region()));
        feelings.sort((a, b) -> a.day().compareTo(b.day()));
        return feelings;
    }

    /** A cue from the day it changes on; the same cue again says nothing new. */
    private List<Saying> cues() {
        List<Saying> cues = new ArrayList<>();
        diary.forEach((day, entries) -> {
            for (DiaryEntry entry : entries) {
                String cue = entry.cue();
                if (cue != null
                        && (cues.isEmpty() || !cues.get(cues.size() - 1).words().equals(cue))) {
                    cues.add(new Saying(day, cue));
                }
            }
        });
        return cues;
    }

    private record Shown(String measure, Direction direction, int decimals) {}
}

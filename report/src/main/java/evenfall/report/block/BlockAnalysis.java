package evenfall.report.block;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import evenfall.report.statistics.FalseDiscovery;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Counts a block's sessions and follows each measure over them. */
public final class BlockAnalysis {

    private static final Words WORDS = Words.beside(BlockAnalysis.class);

    private final List<BlockLanding> counted;
    private final Set<SessionDate> dates;
    private final Map<SessionDate, Double> effortMinutes;
    private final Map<SessionDate, List<StrapPlace>> straps;

    private BlockAnalysis(
            List<BlockLanding> counted,
            Set<SessionDate> dates,
            Map<SessionDate, Double> effortMinutes,
            Map<SessionDate, List<StrapPlace>> straps) {
        this.counted = counted;
        this.dates = dates;
        this.effortMinutes = effortMinutes;
        this.straps = straps;
    }

    /**
     * The block of an athlete's landings.
     *
     * @param athlete who, or null if not known
     * @param sessions sessions that are shown even without a landing
     * @param landings all landings; those left out count nowhere
     * @param effortMinutes effort times minutes where the diary has both
     */
    public static Block of(
            @Nullable String athlete,
            List<SessionDate> sessions,
            List<BlockLanding> landings,
            Map<SessionDate, Double> effortMinutes) {
        return of(athlete, sessions, landings, effortMinutes, Map.of());
    }

    /**
     * The same of sessions of which it is known how the sensors sat.
     *
     * @param straps sensors that sat elsewhere than usual, by session
     */
    public static Block of(
            @Nullable String athlete,
            List<SessionDate> sessions,
            List<BlockLanding> landings,
            Map<SessionDate, Double> effortMinutes,
            Map<SessionDate, List<StrapPlace>> straps) {
        Set<SessionDate> dates = new TreeSet<>(sessions);
        landings.forEach(landing -> dates.add(landing.date()));
        List<BlockLanding> counted =
                landings.stream().filter(landing -> !landing.leftOut()).toList();
        return new BlockAnalysis(counted, dates, effortMinutes, straps).block(athlete);
    }

    /** The same with its sessions, landings and form height alone: measures take the most time and are not always asked for. */
    public static Block withoutMeasures(
            @Nullable String athlete,
            List<SessionDate> sessions,
            List<BlockLanding> landings,
            Map<SessionDate, Double> effortMinutes) {
        Set<SessionDate> dates = new TreeSet<>(sessions);
        landings.forEach(landing -> dates.add(landing.date()));
        List<BlockLanding> counted =
                landings.stream().filter(landing -> !landing.leftOut()).toList();
        BlockAnalysis analysis = new BlockAnalysis(counted, dates, effortMinutes, Map.of());
        return new Block(
                athlete,
                analysis.sessions(),
                counted,
                Map.of(),
                FormHeightFinder.find(counted),
                FormHeightTrend.untold(Trend.TOO_FEW, WORDS.say("height.trend.unasked")),
                null);
    }

    private Block block(@Nullable String athlete) {
        boolean heights = counted.stream().anyMatch(landing -> landing.heightM() != null);
        FormHeightTrend heightTrend = FormHeightTrendAnalysis.find(counted);
        Map<String, CourseAnalysis> analyses = analyses(heights);
        double[] adjusted = adjusted(analyses, heightTrend);
        return new Block(
                athlete,
                sessions(),
                counted,
                courses(analyses, adjusted),
                FormHeightFinder.find(counted),
                heightTrend.among(adjusted[adjusted.length - 1]),
                null);
    }

    private List<BlockSession> sessions() {
        List<BlockSession> sessions = new ArrayList<>();
        for (SessionDate date : dates) {
            sessions.add(new BlockSession(
                    date,
                    count(date, landing -> true),
                    count(date, landing -> landing.side() == Side.LEFT),
                    count(date, landing -> landing.side() == Side.RIGHT),
                    count(date, landing -> landing.side() == Side.BOTH),
                    count(date, BlockLanding::sideSuggested),
                    straps.getOrDefault(date, List.of()),
                    effortMinutes.get(date)));
        }
        return sessions;
    }

    private int count(SessionDate date, Predicate<BlockLanding> which) {
        return (int) counted.stream()
                .filter(landing -> landing.date().equals(date))
                .filter(which)
                .count();
    }

    private Map<String, CourseAnalysis> analyses(boolean heights) {
        Map<String, CourseAnalysis> analyses = new LinkedHashMap<>();
        for (Measure measure : MeasureList.all()) {
            List<BlockLanding> measured = counted.stream()
                    .filter(landing -> landing.values().containsKey(measure.name()))
                    .toList();
            if (!measured.isEmpty()) {
                analyses.put(measure.name(), new CourseAnalysis(measure, measured, heights));
            }
        }
        return analyses;
    }

    /** The chances of all that was looked at after allowing for how many there are; that of form height comes last. */
    private static double[] adjusted(Map<String, CourseAnalysis> analyses, FormHeightTrend heightTrend) {
        double[] all = DoubleStream.concat(
                        analyses.values().stream().flatMapToDouble(analysis -> Arrays.stream(analysis.chances())),
                        DoubleStream.of(heightTrend.chanceAmongAll()))
                .toArray();
        // Chance one: nothing was judged there, so nothing was looked at.
        double[] judged = FalseDiscovery.adjusted(
                Arrays.stream(all).filter(chance -> chance < 1).toArray());
        int next = 0;
        for (int k = 0; k < all.length; k++) {
            all[k] = all[k] < 1 ? judged[next++] : 1;
        }
        return all;
    }

    private static Map<String, MeasureCourse> courses(Map<String, CourseAnalysis> analyses, double[] adjusted) {
        Map<String, MeasureCourse> courses = new LinkedHashMap<>();
        int k = 0;
        for (Map.Entry<String, CourseAnalysis> entry : analyses.entrySet()) {
            courses.put(
                    entry.getKey(),
                    entry.getValue()
                            .course(new Chances(adjusted[k], adjusted[k + 1], adjusted[k + 2], adjusted[k + 3])));
            k += CourseAnalysis.CHANCES;
        }
        return courses;
    }
}

package evenfall.report.block;

import evenfall.fusion.landing.Side;
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
import org.jspecify.annotations.Nullable;

/** Counts a block's sessions and follows each measure over them. */
public final class BlockAnalysis {

    private final List<BlockLanding> counted;
    private final Set<SessionDate> dates;
    private final Map<SessionDate, Double> effortMinutes;

    private BlockAnalysis(List<BlockLanding> counted, Set<SessionDate> dates, Map<SessionDate, Double> effortMinutes) {
        this.counted = counted;
        this.dates = dates;
        this.effortMinutes = effortMinutes;
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
        Set<SessionDate> dates = new TreeSet<>(sessions);
        landings.forEach(landing -> dates.add(landing.date()));
        List<BlockLanding> counted =
                landings.stream().filter(landing -> !landing.leftOut()).toList();
        return new BlockAnalysis(counted, dates, effortMinutes).block(athlete);
    }

    private Block block(@Nullable String athlete) {
        List<BlockSession> sessions = new ArrayList<>();
        for (SessionDate date : dates) {
            sessions.add(new BlockSession(
                    date,
                    count(date, null),
                    count(date, Side.LEFT),
                    count(date, Side.RIGHT),
                    count(date, Side.BOTH),
                    effortMinutes.get(date)));
        }
        boolean heights = counted.stream().anyMatch(landing -> landing.heightM() != null);
        Map<String, MeasureCourse> measures = courses(heights);
        FormHeight formHeight = FormHeightFinder.find(counted);
        return new Block(athlete, sessions, counted, measures, formHeight);
    }

    private int count(SessionDate date, @Nullable Side side) {
        return (int) counted.stream()
                .filter(landing -> landing.date().equals(date))
                .filter(landing -> side == null || landing.side() == side)
                .count();
    }

    private Map<String, MeasureCourse> courses(boolean heights) {
        Map<String, CourseAnalysis> analyses = new LinkedHashMap<>();
        for (Measure measure : MeasureList.all()) {
            List<BlockLanding> measured = counted.stream()
                    .filter(landing -> landing.values().containsKey(measure.name()))
                    .toList();
            if (!measured.isEmpty()) {
                analyses.put(measure.name(), new CourseAnalysis(measure, measured, heights));
            }
        }
        // Chance one: nothing was judged there, so nothing was looked at.
        double[] judged = analyses.values().stream()
                .flatMapToDouble(analysis -> Arrays.stream(analysis.chances()))
                .filter(chance -> chance < 1)
                .toArray();
        double[] adjusted = FalseDiscovery.adjusted(judged);
        Map<String, MeasureCourse> courses = new LinkedHashMap<>();
        int next = 0;
        for (Map.Entry<String, CourseAnalysis> entry : analyses.entrySet()) {
            double[] chances = entry.getValue().chances();
            for (int k = 0; k < chances.length; k++) {
                chances[k] = chances[k] < 1 ? adjusted[next++] : 1;
            }
            courses.put(entry.getKey(), entry.getValue().course(new Chances(chances[0], chances[1], chances[2])));
        }
        return courses;
    }
}

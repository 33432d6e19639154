package evenfall.report.block;

import evenfall.report.log.SessionDate;
import evenfall.report.statistics.Medians;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Landings sorted into their sessions: the session is what is drawn at random, not the landing. */
final class BySession {

    private static final double DAYS_A_WEEK = 7;

    private final List<BlockLanding> landings;
    private final List<SessionDate> dates;
    private final int[] session;

    /** Sorts {@code landings}; sessions are counted from 0 in order of time. */
    BySession(List<BlockLanding> landings) {
        this.landings = List.copyOf(landings);
        TreeSet<SessionDate> sorted = new TreeSet<>();
        landings.forEach(landing -> sorted.add(landing.date()));
        this.dates = new ArrayList<>(sorted);
        Map<SessionDate, Integer> numbers = new HashMap<>();
        dates.forEach(date -> numbers.put(date, numbers.size()));
        this.session = landings.stream()
                .mapToInt(landing -> numbers.getOrDefault(landing.date(), 0))
                .toArray();
    }

    List<BlockLanding> landings() {
        return landings;
    }

    /** The session of each landing. */
    int[] session() {
        return session;
    }

    int sessions() {
        return dates.size();
    }

    /** Weeks of each session since the first. */
    double[] weeks() {
        return weeks(dates);
    }

    /** Weeks of each of these since the first. */
    static double[] weeks(List<SessionDate> dates) {
        return dates.stream()
                .mapToDouble(date -> ChronoUnit.DAYS.between(dates.get(0).day(), date.day()) / DAYS_A_WEEK)
                .toArray();
    }

    /** How many landings each session has. */
    int[] counts() {
        int[] counts = new int[sessions()];
        for (int s : session) {
            counts[s]++;
        }
        return counts;
    }

    /** The dates of the sessions. */
    List<SessionDate> dates() {
        return dates;
    }

    /** The landings of each session, in a list that may be changed. */
    List<List<BlockLanding>> split() {
        List<List<BlockLanding>> split = new ArrayList<>();
        for (int s = 0; s < sessions(); s++) {
            split.add(new ArrayList<>());
        }
        for (int i = 0; i < session.length; i++) {
            split.get(session[i]).add(landings.get(i));
        }
        return split;
    }

    /** The values of each session; {@code values} in the order of the landings. */
    double[][] split(double[] values) {
        int[] counts = counts();
        double[][] split = new double[sessions()][];
        Arrays.setAll(split, s -> new double[counts[s]]);
        int[] next = new int[sessions()];
        for (int i = 0; i < values.length; i++) {
            split[session[i]][next[session[i]]++] = values[i];
        }
        return split;
    }

    /** For values of each session, raised where they were cut off: whether the median is at least so much. */
    boolean[] atLeast(double[][] raised) {
        boolean[] atLeast = new boolean[raised.length];
        for (int s = 0; s < raised.length; s++) {
            atLeast[s] = CutOff.hides(raised[s]);
        }
        return atLeast;
    }

    /** The median of each session's values; {@code values} in the order of the landings. */
    double[] medians(double[] values) {
        return Arrays.stream(split(values)).mapToDouble(Medians::of).toArray();
    }
}

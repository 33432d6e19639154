package evenfall.report.chart;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many landings from about one height were held.
 *
 * @param heightM mean drop height, m
 * @param held how many were held
 * @param judged how many were judged
 */
public record HeldShare(double heightM, int held, int judged) {

    /** Heights nearer than this count as one, m. */
    private static final double ONE_HEIGHT_M = 0.1;

    /** A landing that was judged. */
    public record Judged(double heightM, boolean held) {}

    /** The shares of these landings by height, lowest first. */
    public static List<HeldShare> of(Collection<Judged> landings) {
        Map<Long, int[]> counts = new TreeMap<>();
        Map<Long, Double> sums = new TreeMap<>();
        for (Judged landing : landings) {
            // Half a centimetre up, so that 0.45 m noted twice never falls into two.
            long key = (long) Math.floor((landing.heightM() + 0.005) / ONE_HEIGHT_M);
            int[] count = counts.computeIfAbsent(key, k -> new int[2]);
            count[0] += landing.held() ? 1 : 0;
            count[1]++;
            sums.merge(key, landing.heightM(), Double::sum);
        }
        return counts.entrySet().stream()
                .map(entry -> new HeldShare(
                        sums.getOrDefault(entry.getKey(), 0.0) / entry.getValue()[1],
                        entry.getValue()[0],
                        entry.getValue()[1]))
                .toList();
    }

    /** From 0 to 1. */
    double share() {
        return (double) held / judged;
    }
}

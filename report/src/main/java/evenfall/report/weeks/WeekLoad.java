package evenfall.report.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * Plain figures on a week's effort times minutes (Foster et al. 2001, Journal of Strength and Conditioning Research 15:109), for
 * scientists. They describe; no size of them is safe or unsafe, and they foretell nothing (Impellizzeri et al. 2021).
 *
 * @param monday the week's first day
 * @param monotony mean of the seven days over their standard deviation (with n - 1), a day without an entry being 0; null for a
 *     week that is not known whole, or whose days are all alike
 * @param strain the week's sum times that, or null
 * @param average7 average at the week's end that forgets older days, over seven days (Williams et al. 2017, British Journal of
 *     Sports Medicine 51:209); null where a session before has no effort noted
 * @param average28 the same over 28 days
 */
public record WeekLoad(
        LocalDate monday,
        @Nullable Double monotony,
        @Nullable Double strain,
        @Nullable Double average7,
        @Nullable Double average28) {

    private static final int WEEK = 7;
    private static final int MONTH = 28;

    /**
     * Of all weeks.
     *
     * @param mondays their first days
     * @param efforts effort times minutes of the days that have any
     * @param notNoted days of sessions whose effort is not noted
     * @param last the last day anything is known of
     */
    static List<WeekLoad> of(
            List<LocalDate> mondays, SortedMap<LocalDate, Double> efforts, Set<LocalDate> notNoted, LocalDate last) {
        List<WeekLoad> loads = new ArrayList<>();
        for (LocalDate monday : mondays) {
            LocalDate sunday = monday.plusDays(WEEK - 1L);
            LocalDate end = sunday.isAfter(last) ? last : sunday;
            boolean whole = !efforts.isEmpty()
                    && !efforts.firstKey().isAfter(monday)
                    && !sunday.isAfter(last)
                    && notNoted.stream().noneMatch(day -> !day.isBefore(monday) && !day.isAfter(sunday));
            double[] week = whole ? days(efforts, monday, sunday) : new double[0];
            Double monotony = whole ? monotony(week) : null;
            double sum = 0;
            for (double day : week) {
                sum += day;
            }
            boolean known = !efforts.isEmpty()
                    && !efforts.firstKey().isAfter(end)
                    && notNoted.stream().noneMatch(day -> !day.isAfter(end));
            double[] all = known ? days(efforts, efforts.firstKey(), end) : new double[0];
            loads.add(new WeekLoad(
                    monday,
                    monotony,
                    monotony == null ? null : Double.valueOf(sum * monotony),
                    known ? Double.valueOf(average(all, WEEK)) : null,
                    known ? Double.valueOf(average(all, MONTH)) : null));
        }
        return loads;
    }

    private static double[] days(SortedMap<LocalDate, Double> efforts, LocalDate from, LocalDate to) {
        return from.datesUntil(to.plusDays(1))
                .mapToDouble(day -> efforts.getOrDefault(day, 0.0))
                .toArray();
    }

    private static @Nullable Double monotony(double[] week) {
        double mean = 0;
        for (double day : week) {
            mean += day / week.length;
        }
        double spread = new StandardDeviation().evaluate(week);
        return spread > 0 ? Double.valueOf(mean / spread) : null;
    }

    /** E = λL + (1 - λ)E, λ = 2 / (N + 1), from the first day's own load. */
    private static double average(double[] loads, int days) {
        double weight = 2 / (days + 1.0);
        double average = loads[0];
        for (int day = 1; day < loads.length; day++) {
            average = weight * loads[day] + (1 - weight) * average;
        }
        return average;
    }
}

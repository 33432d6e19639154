package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.report.session.AlikeLandings;
import evenfall.report.session.SessionLanding;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Where half of what is usual lies: the middle half of the athlete's landings like one. */
final class UsualHalf {

    private final List<Measures> alike;

    private UsualHalf(List<Measures> alike) {
        this.alike = alike;
    }

    /** Between these lies half of what was measured, a quarter below and a quarter above. */
    record Range(double low, double high) {}

    /** What is usual for landings like this one. */
    static UsualHalf beside(SessionLanding event, List<SessionLanding> earlier) {
        return new UsualHalf(AlikeLandings.of(event, earlier).stream()
                .map(other -> other.landing().measures())
                .filter(Objects::nonNull)
                .toList());
    }

    /** What is usual of a figure, or null where too little is known. */
    @Nullable Range of(Figure figure) {
        double[] values = alike.stream()
                .map(figure::value)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return values.length < AlikeLandings.FEWEST ? null : new Range(quantile(values, 0.25), quantile(values, 0.75));
    }

    /** Linear between ranks, Hyndman and Fan's seventh definition (1996, Am. Stat. 50:361). */
    private static double quantile(double[] sorted, double share) {
        double rank = share * (sorted.length - 1);
        int below = (int) Math.floor(rank);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
    }
}

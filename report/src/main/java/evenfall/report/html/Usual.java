package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What is usual for the athlete on that foot from about that height: the middle half of the newest earlier landings. */
final class Usual {

    /** With fewer landings nothing is usual yet: common practice, no source. */
    static final int FEWEST = 12;

    /** Newer landings say more about what is usual now. */
    private static final int MOST = 40;

    private static final double SAME_HEIGHT_M = 0.1;

    private final List<Measures> alike;

    private Usual(List<Measures> alike) {
        this.alike = alike;
    }

    /** Between these lies half of what was measured, a quarter below and a quarter above. */
    record Range(double low, double high) {}

    /** What is usual for landings like this one. */
    static Usual beside(SessionLanding event, List<SessionLanding> earlier) {
        List<Measures> alike = new ArrayList<>();
        Double height = event.heightM();
        for (int i = earlier.size() - 1; i >= 0 && alike.size() < MOST && height != null; i--) {
            SessionLanding other = earlier.get(i);
            Measures measures = other.landing().measures();
            Double from = other.heightM();
            boolean same =
                    other.side() == event.side() && from != null && Math.abs(from - height) < SAME_HEIGHT_M - 1e-9;
            if (same && measures != null && !other.note().leftOut()) {
                alike.add(measures);
            }
        }
        return new Usual(alike);
    }

    /** What is usual of a figure, or null where too little is known. */
    @Nullable Range of(Figure figure) {
        double[] values = alike.stream()
                .map(figure::value)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return values.length < FEWEST ? null : new Range(quantile(values, 0.25), quantile(values, 0.75));
    }

    /** Linear between ranks, Hyndman and Fan's seventh definition (1996, Am. Stat. 50:361). */
    private static double quantile(double[] sorted, double share) {
        double rank = share * (sorted.length - 1);
        int below = (int) Math.floor(rank);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
    }
}

package evenfall.report.form;

import evenfall.fusion.landing.Measures;
import evenfall.report.statistics.Medians;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is usual for an athlete in low, pain-free landings that the coach has approved. A measure takes part from {@value
 * #LANDINGS} landings of {@value #SESSIONS} sessions on that have it: common practice, no source.
 */
public final class Baseline {

    static final int LANDINGS = 20;
    static final int SESSIONS = 3;

    /** Nothing is usual yet. */
    public static final Baseline NONE = new Baseline(Map.of(), 0, 0);

    private final Map<Footing, Map<Judged, OwnUsual>> usual;
    private final int landings;
    private final int sessions;

    private Baseline(Map<Footing, Map<Judged, OwnUsual>> usual, int landings, int sessions) {
        this.usual = usual;
        this.landings = landings;
        this.sessions = sessions;
    }

    /**
     * One landing of the baseline.
     *
     * @param session the name of its session
     * @param measures what was measured
     * @param circumstance what it was landed on
     */
    public record Approved(String session, Measures measures, Circumstance circumstance) {}

    /** What is usual in these landings. */
    public static Baseline of(List<Approved> landings) {
        Map<Footing, Map<Judged, OwnUsual>> usual = new EnumMap<>(Footing.class);
        for (Footing footing : Footing.values()) {
            Map<Judged, OwnUsual> ofFooting = new EnumMap<>(Judged.class);
            for (Judged judged : Judged.values()) {
                OwnUsual own = judged.canBeOwn() ? own(judged, alike(judged, footing, landings)) : null;
                if (own != null) {
                    ofFooting.put(judged, own);
                }
            }
            usual.put(footing, ofFooting);
        }
        return new Baseline(usual, landings.size(), sessions(landings.stream()));
    }

    /** What is usual in a measure on that footing; null without enough landings. */
    public @Nullable OwnUsual usual(Judged judged, Footing footing) {
        return Objects.requireNonNull(usual.getOrDefault(footing, Map.of())).get(judged);
    }

    /** How many landings it is made up of. */
    public int landings() {
        return landings;
    }

    /** Of how many sessions. */
    public int sessions() {
        return sessions;
    }

    /** Whether anything is usual yet. */
    public boolean stands() {
        return usual.values().stream().anyMatch(measures -> !measures.isEmpty());
    }

    private static int sessions(Stream<Approved> landings) {
        return (int) landings.map(Approved::session).distinct().count();
    }

    private static List<Approved> alike(Judged judged, Footing footing, List<Approved> landings) {
        return landings.stream()
                .filter(landing -> judged.value(landing.measures()) != null)
                .filter(landing ->
                        !judged.hasSide() || Footing.of(landing.circumstance().side()) == footing)
                .toList();
    }

    private static @Nullable OwnUsual own(Judged judged, List<Approved> landings) {
        int count = sessions(landings.stream());
        if (landings.size() < LANDINGS || count < SESSIONS) {
            return null;
        }
        double[] values = new double[landings.size()];
        List<Double> errors = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            Approved landing = landings.get(i);
            values[i] = Footing.turned(
                    judged.turning(),
                    Objects.requireNonNull(judged.value(landing.measures())),
                    landing.circumstance().side());
            Double sigma = judged.sigma(landing.measures());
            if (sigma != null && Double.isFinite(sigma)) {
                errors.add(sigma);
            }
        }
        double median = Medians.of(values);
        double error = errors.isEmpty()
                ? 0
                : Medians.of(errors.stream().mapToDouble(Double::doubleValue).toArray());
        double spread = Math.max(Medians.spread(values, median), Math.max(error, judged.leastSpread()));
        return new OwnUsual(median, spread, values.length, count);
    }
}

package evenfall.report.html;

import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Side;
import evenfall.report.chart.CrowdLines;
import evenfall.report.chart.LandingChart;
import evenfall.report.chart.Svg;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Landings of one session on the same foot from about the same height, which lie behind one another's charts. */
final class Crowds {

    private static final double ONE_HEIGHT_M = 0.1;

    private final Map<String, List<LandingTrace>> traces = new TreeMap<>();

    Crowds(List<SessionLanding> landings) {
        for (SessionLanding event : landings) {
            LandingTrace trace = event.trace();
            String id = id(event);
            if (trace != null && id != null && !event.note().leftOut()) {
                traces.computeIfAbsent(id, key -> new ArrayList<>()).add(trace);
            }
        }
        // Nobody is a crowd.
        traces.values().removeIf(crowd -> crowd.size() < 2);
    }

    /** Each crowd once. */
    List<Svg> drawn(LandingChart chart) {
        CrowdLines lines = new CrowdLines(chart);
        return traces.entrySet().stream()
                .map(crowd -> lines.group(crowd.getKey(), crowd.getValue()))
                .toList();
    }

    /** The id of the crowd a landing stands in, or null. */
    @Nullable String of(SessionLanding event) {
        String id = id(event);
        return id != null && traces.containsKey(id) ? id : null;
    }

    private static @Nullable String id(SessionLanding event) {
        Double height = event.heightM();
        Side side = event.side();
        return height == null || side == null
                ? null
                : String.format(
                        Locale.ROOT, "crowd-%s-%d", side.code(), (long) Math.floor((height + 0.005) / ONE_HEIGHT_M));
    }
}

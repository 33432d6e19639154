package evenfall.report.chart;

import evenfall.fusion.landing.LandingTrace;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The leading lines of several landings, drawn once and laid behind each of them. Only the first line of a panel is drawn,
 * and coarsely: a crowd is looked at together.
 */
public final class CrowdLines {

    private static final double COARSE_PIXELS = 0.6;
    private static final List<Signal> LEADING = List.of(
            Signal.PELVIS_G,
            Signal.TRUNK_FLEXION,
            Signal.PELVIC_ROTATION,
            Signal.TRUNK_LEAN,
            Signal.HEIGHT,
            Signal.SPEED);

    private final LandingChart chart;

    /** For that chart. */
    public CrowdLines(LandingChart chart) {
        this.chart = chart;
    }

    /** The lines of these landings as one group that charts refer to by {@code id}; to stand in an unseen drawing. */
    public Svg group(String id, List<LandingTrace> traces) {
        StringBuilder d = new StringBuilder();
        for (LandingTrace trace : traces) {
            paths(trace).forEach(path -> PathText.append(d, path));
        }
        return new Svg("<path id=\"" + id + "\" d=\"" + d + "\" fill=\"none\" stroke=\"" + Ink.hex(Ink.CROWD)
                + "\" stroke-width=\".8\"/>");
    }

    /** The lines of one landing. */
    List<Path2D> paths(LandingTrace trace) {
        List<Path2D> paths = new ArrayList<>();
        for (Signal signal : LEADING) {
            Path2D path = chart.path(trace, signal, COARSE_PIXELS);
            if (path != null) {
                paths.add(path);
            }
        }
        return paths;
    }
}

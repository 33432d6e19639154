package evenfall.fusion.analysis;

import evenfall.fusion.landing.LandingMeasurer;
import java.util.List;

/**
 * What new samples brought to light.
 *
 * @param landings landings to be told, in order; none is told twice
 * @param falls contacts of falls, s on the pelvis's clock, in order; none is told twice
 */
public record LiveNews(List<LandingMeasurer.Measured> landings, List<Double> falls) {

    /** No news. */
    public static final LiveNews NONE = new LiveNews(List.of(), List.of());

    public LiveNews {
        landings = List.copyOf(landings);
        falls = List.copyOf(falls);
    }
}

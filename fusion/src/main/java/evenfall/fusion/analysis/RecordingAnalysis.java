package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingTrace;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that one recording tells.
 *
 * @param durationS last minus first time stamp of the pelvis, s, gaps included
 * @param rateHz true rate of the pelvis sensor
 * @param clock the upper back's clock against the pelvis's, or null without an upper back
 * @param mounting how each worn sensor sits
 * @param findings what is wrong or doubtful
 * @param heelDropsS when the heels struck in heel drops, s on the pelvis's clock, in order
 * @param landings all events in order of time
 * @param traces signals of those events that are landings, by {@link Landing#index()}
 */
public record RecordingAnalysis(
        double durationS,
        double rateHz,
        @Nullable ClockMap clock,
        Map<Place, Mounting> mounting,
        List<Finding> findings,
        List<Double> heelDropsS,
        List<Landing> landings,
        Map<Integer, LandingTrace> traces) {

    public RecordingAnalysis {
        mounting = Map.copyOf(mounting);
        findings = List.copyOf(findings);
        heelDropsS = List.copyOf(heelDropsS);
        landings = List.copyOf(landings);
        traces = Map.copyOf(traces);
    }

    /** The same with these findings. */
    public RecordingAnalysis withFindings(List<Finding> others) {
        return new RecordingAnalysis(durationS, rateHz, clock, mounting, others, heelDropsS, landings, traces);
    }

    /** The same without signals, which need much room. */
    public RecordingAnalysis withoutTraces() {
        return withTraces(Map.of());
    }

    /** The same with these signals of its landings, by {@link Landing#index()}. */
    public RecordingAnalysis withTraces(Map<Integer, LandingTrace> others) {
        return new RecordingAnalysis(durationS, rateHz, clock, mounting, findings, heelDropsS, landings, others);
    }
}

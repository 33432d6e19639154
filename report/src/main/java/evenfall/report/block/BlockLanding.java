package evenfall.report.block;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.log.SessionDate;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureKind;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One landing of a block.
 *
 * @param date its session
 * @param index its number among all that happened in the session, steps and falls included
 * @param number its number among the landings of the session, from 1
 * @param side the foot or feet landed on, or null
 * @param sideSuggested whether only the sensors tell the side
 * @param heightM drop height as noted, m, or null
 * @param leftOut whether it counts nowhere
 * @param form the verdict, or null
 * @param values measures by name, only those that were measured
 * @param atLeast names of the values that may be larger, since the sensor stood at full scale
 */
public record BlockLanding(
        SessionDate date,
        int index,
        int number,
        @Nullable Side side,
        boolean sideSuggested,
        @Nullable Double heightM,
        boolean leftOut,
        @Nullable Form form,
        Map<String, Double> values,
        Set<String> atLeast) {

    private static final String PEAK = "peakG";
    private static final String PEAK_UPPER_BACK = "peakUpperBackG";
    private static final String LOADING_RATE = "loadingRateGPerS";

    public BlockLanding {
        values = Map.copyOf(values);
        atLeast = Set.copyOf(atLeast);
    }

    /** A landing whose foot is noted and of which nothing was cut off. */
    public BlockLanding(
            SessionDate date,
            int index,
            @Nullable Side side,
            @Nullable Double heightM,
            boolean leftOut,
            @Nullable Form form,
            Map<String, Double> values) {
        this(date, index, index, side, false, heightM, leftOut, form, values, Set.of());
    }

    /** The names of what a sensor at full scale cuts off. */
    static Set<String> cutOff(boolean pelvis, boolean upperBack) {
        Set<String> names = new HashSet<>();
        if (pelvis) {
            names.add(PEAK);
            names.add(LOADING_RATE);
        }
        if (upperBack) {
            names.add(PEAK_UPPER_BACK);
        }
        return names;
    }

    /** Drop height as a person reads it: a noted one to a centimetre, a measured one to a tenth of a metre, m, or null. */
    public @Nullable Double toldHeightM() {
        if (heightM != null) {
            return Math.round(heightM * 100) / 100.0;
        }
        Double measured = values.get("dropHeightM");
        return measured == null ? null : Double.valueOf(Math.round(measured * 10) / 10.0);
    }

    /** The landings of a session of the log. */
    public static List<BlockLanding> of(SessionDate date, Session session) {
        List<BlockLanding> landings = new ArrayList<>();
        for (SessionLanding event : session.landings()) {
            Measures measures = event.landing().measures();
            if (event.landing().kind() != EventKind.LANDING || measures == null) {
                continue;
            }
            Map<String, Double> values = new LinkedHashMap<>();
            for (Measure measure : MeasureList.all()) {
                Double value = measure.kind() == MeasureKind.COMPARED ? measure.of(measures) : null;
                if (value != null) {
                    values.put(measure.name(), value);
                }
            }
            FormVerdict verdict = event.verdict();
            landings.add(new BlockLanding(
                    date,
                    event.landing().index(),
                    landings.size() + 1,
                    event.side(),
                    event.sideSuggested(),
                    event.note().heightM(),
                    event.note().leftOut() || event.landing().flags().contains(LandingFlag.WRONG_UNIT),
                    verdict == null ? null : verdict.form(),
                    values,
                    cutOff(
                            measures.impact().clipped(),
                            event.landing().flags().contains(LandingFlag.CLIPPED_UPPER_BACK))));
        }
        return landings;
    }
}

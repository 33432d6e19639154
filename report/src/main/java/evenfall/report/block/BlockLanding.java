package evenfall.report.block;

import evenfall.fusion.event.EventKind;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One landing of a block.
 *
 * @param date its session
 * @param index its number in the session
 * @param side the foot or feet landed on as noted, or null
 * @param heightM drop height as noted, m, or null
 * @param leftOut whether it counts nowhere
 * @param form the verdict, or null
 * @param values measures by name, only those that were measured
 */
public record BlockLanding(
        SessionDate date,
        int index,
        @Nullable Side side,
        @Nullable Double heightM,
        boolean leftOut,
        @Nullable Form form,
        Map<String, Double> values) {

    public BlockLanding {
        values = Map.copyOf(values);
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
                    event.note().side(),
                    event.note().heightM(),
                    event.note().leftOut(),
                    verdict == null ? null : verdict.form(),
                    values));
        }
        return landings;
    }
}

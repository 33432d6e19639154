package evenfall.report.block;

import evenfall.report.form.FormStandard;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A block of training.
 *
 * @param athlete who, or null for a table that does not say
 * @param sessions the sessions in order of time
 * @param landings the landings that count, in order of time
 * @param measures each measure over the sessions, by name, in the order results list them
 * @param formHeight the height up to which form was held
 * @param formHeightTrend how that height moves over the weeks
 * @param standard what form was judged by, or null for a table, which holds verdicts of its own
 */
public record Block(
        @Nullable String athlete,
        List<BlockSession> sessions,
        List<BlockLanding> landings,
        Map<String, MeasureCourse> measures,
        FormHeight formHeight,
        FormHeightTrend formHeightTrend,
        @Nullable FormStandard standard) {

    public Block {
        sessions = List.copyOf(sessions);
        landings = List.copyOf(landings);
        measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    }

    /** The same under another name. */
    public Block named(String name) {
        return new Block(name, sessions, landings, measures, formHeight, formHeightTrend, standard);
    }

    /** The same with what form was judged by. */
    public Block judgedBy(FormStandard judgedBy) {
        return new Block(athlete, sessions, landings, measures, formHeight, formHeightTrend, judgedBy);
    }
}

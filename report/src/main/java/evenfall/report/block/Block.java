package evenfall.report.block;

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
 */
public record Block(
        @Nullable String athlete,
        List<BlockSession> sessions,
        List<BlockLanding> landings,
        Map<String, MeasureCourse> measures,
        FormHeight formHeight) {

    public Block {
        sessions = List.copyOf(sessions);
        landings = List.copyOf(landings);
        measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    }
}

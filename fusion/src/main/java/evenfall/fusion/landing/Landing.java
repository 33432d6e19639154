package evenfall.fusion.landing;

import evenfall.fusion.event.EventKind;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One found event of a recording: a landing with its measures, a run of steps, or a fall.
 *
 * @param index 1 for the first event of the recording, and so on
 * @param kind what it is
 * @param moments when
 * @param count contacts in a run of steps, null for other kinds
 * @param measures what was measured; null unless {@code kind} is {@link EventKind#LANDING}
 * @param flags why something is missing or weaker than usual
 */
public record Landing(
        int index,
        EventKind kind,
        Moments moments,
        @Nullable Integer count,
        @Nullable Measures measures,
        Set<LandingFlag> flags) {

    public Landing {
        flags = Set.copyOf(flags);
    }

    /** The same with one flag more. */
    public Landing flagged(LandingFlag flag) {
        Set<LandingFlag> more = EnumSet.of(flag);
        more.addAll(flags);
        return new Landing(index, kind, moments, count, measures, more);
    }
}

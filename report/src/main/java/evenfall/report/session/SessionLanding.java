package evenfall.report.session;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingTrace;
import evenfall.report.form.FormVerdict;
import evenfall.report.log.LandingNote;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One event of a session with everything known of it.
 *
 * @param landing what was measured
 * @param verdict how it was held, or null for steps and falls
 * @param trace its signals for a chart, or null for steps and falls
 * @param note what the coach noted
 */
public record SessionLanding(
        Landing landing,
        @Nullable FormVerdict verdict,
        @Nullable LandingTrace trace,
        LandingNote note) {

    /** Why something is missing or weaker than usual, the verdict's own flag included, in a fixed order. */
    public Set<LandingFlag> flags() {
        EnumSet<LandingFlag> flags = EnumSet.noneOf(LandingFlag.class);
        flags.addAll(landing.flags());
        if (verdict != null && verdict.partial()) {
            flags.add(LandingFlag.FORM_PARTIAL);
        }
        return Collections.unmodifiableSet(flags);
    }
}

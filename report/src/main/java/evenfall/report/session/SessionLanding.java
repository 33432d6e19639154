package evenfall.report.session;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingTrace;
import evenfall.report.form.FormVerdict;
import evenfall.report.log.LandingNote;
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
        LandingNote note) {}

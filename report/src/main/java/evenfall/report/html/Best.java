package evenfall.report.html;

import evenfall.fusion.landing.Measures;
import evenfall.report.form.Form;
import evenfall.report.form.FormStandard;
import evenfall.report.form.Judged;
import evenfall.report.session.SessionLanding;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The landing to hold another against: on the same foot, held, from about the same height or else the nearest, and of
 * those the one that stayed farthest within its limits.
 */
final class Best {

    private static final double SAME_HEIGHT_M = 0.1;
    private static final List<Judged> WITHIN =
            List.of(Judged.BRAKING, Judged.ROTATION, Judged.OBLIQUITY, Judged.LEAN, Judged.TWIST);

    private Best() {}

    /** The best other landing, or null where there is none. */
    static @Nullable SessionLanding beside(SessionLanding event, List<SessionLanding> all) {
        Double height = event.heightM();
        return all.stream()
                .filter(other -> other.landing().index() != event.landing().index()
                        && !other.note().leftOut()
                        && other.side() == event.side()
                        && other.form() == Form.HELD)
                .min(Comparator.<SessionLanding>comparingDouble(other -> steps(height, other.heightM()))
                        .thenComparingDouble(Best::closeness))
                .orElse(null);
    }

    /** How far away in height, in whole steps: within one all are alike. */
    private static double steps(@Nullable Double height, @Nullable Double other) {
        return height == null || other == null
                ? Double.MAX_VALUE
                : Math.floor(Math.abs(height - other) / SAME_HEIGHT_M + 1e-9);
    }

    /** The largest share of a limit that was used. */
    static double closeness(SessionLanding event) {
        Measures measures = event.landing().measures();
        double most = 0;
        if (measures != null) {
            for (Judged judged : WITHIN) {
                Double value = judged.value(measures);
                most = Math.max(most, value == null ? 0 : Math.abs(value) / FormStandard.startingSize(judged));
            }
        }
        return most;
    }
}

package evenfall.report.session;

import evenfall.fusion.landing.Measures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an athlete's usual landing is looked for in, wherever something is said of it: the newest earlier landings on the same
 * foot from about the same height. Both are as noted, else as measured.
 */
public final class AlikeLandings {

    /** With fewer landings nothing is usual yet: common practice, no source. */
    public static final int FEWEST = 12;

    /** Newer landings say more about what is usual now; no more than these are asked. */
    public static final int MOST = 40;

    /** Heights nearer than this are about the same, m. */
    public static final double SAME_HEIGHT_M = 0.1;

    private static final double ROUNDING = 1e-9;

    private AlikeLandings() {}

    /**
     * Those like a landing, newest first; none where its height is not known.
     *
     * @param earlier landings of the same athlete, oldest first, without this one
     */
    public static List<SessionLanding> of(SessionLanding event, List<SessionLanding> earlier) {
        List<SessionLanding> alike = new ArrayList<>();
        Double height = height(event);
        for (int i = earlier.size() - 1; i >= 0 && alike.size() < MOST && height != null; i--) {
            SessionLanding other = earlier.get(i);
            Double from = height(other);
            boolean same = from != null && Math.abs(from - height) < SAME_HEIGHT_M - ROUNDING;
            if (same && other.side() == event.side() && !other.note().leftOut()) {
                alike.add(other);
            }
        }
        return alike;
    }

    /** Null also where it was measured with so large an error that another height is as likely. */
    private static @Nullable Double height(SessionLanding event) {
        Measures measures = event.landing().measures();
        if (event.note().heightM() != null || measures == null) {
            return event.note().heightM();
        }
        Double sigma = measures.sigma().dropHeightM();
        return sigma == null || !(sigma <= SAME_HEIGHT_M)
                ? null
                : measures.fall().dropHeightM();
    }
}

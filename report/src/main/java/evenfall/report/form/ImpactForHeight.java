package evenfall.report.form;

import evenfall.report.statistics.CensoredLine;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How hard an athlete usually lands from a height: a robust line of the logarithm of the peak against that of the drop height,
 * through landings on the same surface in the same shoes where these are noted. Peaks cut off at full scale count as at
 * least so much. Not safe for use from several threads.
 */
public final class ImpactForHeight {

    static final int LANDINGS = 20;

    /** Heights whose largest is less than this many times the smallest do not tell what height does. */
    private static final double TELLS_HEIGHT = 1.1;

    /** So many times beyond the heights tried it is still told what is usual: common practice, no source. */
    private static final double BEYOND_TRIED = 1.15;

    /** With a larger share of peaks cut off at full scale nobody knows how hard the usual landing is. */
    private static final double MOST_CLIPPED = 0.5;

    /** The least a spread counts as, as a share of the peak: common practice, no source. */
    private static final double LEAST_SPREAD = 0.05;

    private final List<Impact> impacts;
    private final Map<String, Fit> fits = new HashMap<>();

    /**
     * One landing.
     *
     * @param circumstance its height, surface and shoes
     * @param peakG its peak, g
     * @param clipped whether the peak is at least so much
     */
    public record Impact(Circumstance circumstance, double peakG, boolean clipped) {

        boolean usable() {
            Double height = circumstance.heightM();
            return height != null && height > 0 && peakG > 0;
        }

        double height() {
            return Objects.requireNonNull(circumstance.heightM());
        }
    }

    private record Fit(@Nullable CensoredLine line, double lowest, double highest, int landings) {}

    /** What an athlete's landings tell. */
    public ImpactForHeight(List<Impact> impacts) {
        this.impacts = impacts.stream().filter(Impact::usable).toList();
    }

    /** How hard the athlete usually lands in these circumstances; null where too few landings are like it. */
    @Nullable UsualImpact usual(Circumstance circumstance) {
        Double height = circumstance.heightM();
        if (height == null || !(height > 0)) {
            return null;
        }
        String ground = plain(circumstance.surface());
        String worn = plain(circumstance.shoes());
        Fit fit = fits.computeIfAbsent(ground + "\n" + worn, key -> fit(ground, worn));
        if (fit.line == null || height < fit.lowest / BEYOND_TRIED || height > fit.highest * BEYOND_TRIED) {
            return null;
        }
        double at = Math.log(height);
        return new UsualImpact(
                Math.exp(fit.line.at(at)),
                Math.hypot(Math.max(LEAST_SPREAD, fit.line.spread()), fit.line.error(at)),
                fit.landings);
    }

    private Fit fit(String ground, String worn) {
        List<Impact> alike = impacts.stream()
                .filter(impact -> isOr(ground, impact.circumstance.surface()))
                .filter(impact -> isOr(worn, impact.circumstance.shoes()))
                .toList();
        int n = alike.size();
        long clipped = alike.stream().filter(Impact::clipped).count();
        double lowest = alike.stream().mapToDouble(Impact::height).min().orElse(0);
        double highest = alike.stream().mapToDouble(Impact::height).max().orElse(0);
        if (n < LANDINGS || clipped > MOST_CLIPPED * n) {
            return new Fit(null, lowest, highest, n);
        }
        double[] x =
                alike.stream().mapToDouble(impact -> Math.log(impact.height())).toArray();
        double[] y =
                alike.stream().mapToDouble(impact -> Math.log(impact.peakG)).toArray();
        boolean[] atLeast = new boolean[n];
        for (int i = 0; i < n; i++) {
            atLeast[i] = alike.get(i).clipped;
        }
        return new Fit(new CensoredLine(x, y, atLeast, highest > TELLS_HEIGHT * lowest), lowest, highest, n);
    }

    /** Where nothing is noted of a landing, all others are like it. */
    private static boolean isOr(String noted, @Nullable String other) {
        return noted.isEmpty() || noted.equals(plain(other));
    }

    private static String plain(@Nullable String text) {
        return text == null ? "" : text.strip().toLowerCase(Locale.ROOT);
    }
}

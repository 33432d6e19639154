package evenfall.report.form;

import org.jspecify.annotations.Nullable;

/**
 * Between what one measure may lie: beyond is a fault, at it is not. Infinite on a side where nothing is a fault. On one foot,
 * measures that have a side are turned so that + is towards it.
 *
 * @param low least it may be
 * @param high most it may be
 * @param source where it came from
 * @param usual what is usual in the athlete's baseline, or null without one
 * @param starting the size a coach starts from, of either end
 */
public record Limit(
        double low,
        double high,
        LimitSource source,
        @Nullable OwnUsual usual,
        double starting) {

    /** The same size to every side that is a fault. */
    static Limit ofSize(Way way, double size, LimitSource source, @Nullable OwnUsual usual, double starting) {
        return new Limit(
                way == Way.MORE ? Double.NEGATIVE_INFINITY : -size,
                way == Way.LESS ? Double.POSITIVE_INFINITY : size,
                source,
                usual,
                starting);
    }

    /**
     * The athlete's own: so many spreads from the median on the side that is a fault, and at least as many from level, so
     * that nothing nearer to level than usual is a fault; but never beyond {@code most}.
     */
    static Limit own(Way way, OwnUsual usual, double spreads, double most, double starting) {
        double reach = spreads * usual.spread();
        double high = Math.min(most, Math.max(0, usual.median()) + reach);
        double low = Math.max(-most, Math.min(0, usual.median()) - reach);
        return new Limit(
                way == Way.MORE ? Double.NEGATIVE_INFINITY : low,
                way == Way.LESS ? Double.POSITIVE_INFINITY : high,
                LimitSource.OWN,
                usual,
                starting);
    }

    /** How far beyond the limit a value lies, in its unit; not above 0 within. */
    double beyond(double value) {
        return Math.max(value - high, low - value);
    }

    /** The size allowed to the side on which a value lies. */
    public double size(double value) {
        return Double.isInfinite(high) || (value < 0 && !Double.isInfinite(low)) ? -low : high;
    }

    /** Whether the athlete's own limit lets more pass on that side than where a coach starts. */
    public boolean looserThanStart(double value) {
        return source == LimitSource.OWN && size(value) > starting;
    }
}

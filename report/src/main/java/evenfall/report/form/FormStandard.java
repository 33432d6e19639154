package evenfall.report.form;

import evenfall.fusion.landing.Side;
import evenfall.report.setting.Settings;
import org.jspecify.annotations.Nullable;

/**
 * What the landings of one athlete are judged by. A limit the coach set goes before the athlete's own, and that before where a
 * coach starts. An own limit may be wider than the one a coach starts from, up to a share the coach may set; what passes that
 * one and not the own is said and does not fail.
 *
 * @param settings what the coach set
 * @param baseline what is usual in low landings the coach approved
 * @param impact how hard the athlete usually lands from a height, or null where that is not known
 */
public record FormStandard(
        Settings settings, Baseline baseline, @Nullable ImpactForHeight impact) {

    /** Where a coach starts: common practice, no source. */
    public static final FormStandard STARTING = of(Settings.starting(LimitSettings.LIST));

    /** The size of a measure a coach starts from, in its unit. */
    public static double startingSize(Judged judged) {
        return STARTING.settings.value(judged.setting());
    }

    /** What the coach set, of an athlete of whom nothing is known. */
    public static FormStandard of(Settings settings) {
        return new FormStandard(settings, Baseline.NONE, null);
    }

    /**
     * Between what a measure may lie on that footing.
     *
     * @param judged anything but {@link Judged#PEAK}, whose limit depends on the height
     */
    public Limit limit(Judged judged, Footing footing) {
        double size = settings.value(judged.setting());
        double starting = settings.of(judged.setting()).setting().starting();
        OwnUsual usual = baseline.usual(judged, footing);
        if (settings.of(judged.setting()).isSet()) {
            return Limit.ofSize(judged.way(), size, LimitSource.COACH, usual, starting);
        }
        return usual == null
                ? Limit.ofSize(judged.way(), size, LimitSource.STARTING, null, starting)
                : Limit.own(
                        judged.way(),
                        usual,
                        settings.value("own-spreads"),
                        starting * settings.value("own-at-most"),
                        starting);
    }

    /**
     * The size of a measure that is no fault yet, to the side on which a value with the sign results have lies.
     *
     * @param side the foot or feet landed on, or null if not known
     */
    public double size(Judged judged, double value, @Nullable Side side) {
        return limit(judged, Footing.of(side)).size(Footing.turned(judged.turning(), value, side));
    }

    /** How hard the athlete usually lands in these circumstances; null where that is not known. */
    public @Nullable UsualImpact impact(Circumstance circumstance) {
        return impact == null ? null : impact.usual(circumstance);
    }

    /** So many spreads above usual a peak may lie. */
    double peakSpreads() {
        return settings.value("peak-spreads");
    }
}

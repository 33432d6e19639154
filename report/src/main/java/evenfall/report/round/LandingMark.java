package evenfall.report.round;

import evenfall.fusion.landing.Side;
import evenfall.report.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * One landing on the strip.
 *
 * @param atS its contact, s
 * @param heightM drop height, said or else measured, m, or null
 * @param side the foot or feet, said or else seen, or null
 * @param form the verdict, or null where not judged
 */
public record LandingMark(
        double atS,
        @Nullable Double heightM,
        @Nullable Side side,
        @Nullable Form form) {}

package evenfall.fusion.analysis;

import java.util.function.DoubleUnaryOperator;

/**
 * What of a sensor's stream may be taken for one landing.
 *
 * @param earliestS end of the event before, or the beginning, s on the sensor's clock
 * @param contactS about the contact
 * @param untilS where the next event begins, or the end
 */
record LandingSpan(double earliestS, double contactS, double untilS) {

    /** The same on another clock. */
    LandingSpan on(DoubleUnaryOperator clock) {
        return new LandingSpan(
                clock.applyAsDouble(earliestS), clock.applyAsDouble(contactS), clock.applyAsDouble(untilS));
    }
}

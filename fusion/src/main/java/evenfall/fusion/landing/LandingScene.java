package evenfall.fusion.landing;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.StrapGive;
import evenfall.fusion.event.Event;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.rotation.Quaternion;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All that the measures of one landing are taken from.
 *
 * @param event what the finder found
 * @param untilS where the next event begins or the recording ends, s on the pelvis's clock
 * @param zeroFromS start of the quiet stance before take-off, s on the pelvis's clock
 * @param zeroToS its end; where there was none, both are the beginning of the window
 * @param after the last quiet stance after the landing, or null
 * @param pelvis the pelvis's motion
 * @param upperBack the upper back's, or null
 * @param clock between the two, or null without an upper back
 * @param flags what is known to be weak before anything is measured
 */
public record LandingScene(
        Event event,
        double untilS,
        double zeroFromS,
        double zeroToS,
        @Nullable Span after,
        Body pelvis,
        @Nullable Body upperBack,
        @Nullable ClockMap clock,
        Set<LandingFlag> flags) {

    /** A stretch of time, s on the pelvis's clock. */
    public record Span(double startS, double endS) {}

    /**
     * One segment.
     *
     * @param motion how its sensor moved
     * @param segmentFromSensor how it is mounted
     * @param headingSigma one standard deviation of the mounting's heading, rad
     * @param give how the sensor tips on its strap
     * @param held whether its strap stayed in place through the landing; else its angles are not known
     */
    public record Body(
            SmoothedMotion motion, Quaternion segmentFromSensor, double headingSigma, StrapGive give, boolean held) {}
}

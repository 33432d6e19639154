package evenfall.fusion.analysis;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.event.Event;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.LandingMeasurer;
import evenfall.fusion.landing.LandingScene;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.SensorStream;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Lays together what one landing is measured from. */
final class SceneMaker {

    /** Missing samples count from so long before the fall begins, s. */
    private static final double BEFORE_S = 0.2;
    /** Missing samples count until so long after contact, s. */
    private static final double AFTER_S = 1;

    private final SensorStream pelvisStream;
    private final BodyMounting mountings;
    private final @Nullable ClockMap clock;

    SceneMaker(SensorStream pelvisStream, BodyMounting mountings, @Nullable ClockMap clock) {
        this.pelvisStream = pelvisStream;
        this.mountings = mountings;
        this.clock = clock;
    }

    /** How one sensor went through the landing. */
    record Part(WindowMaker.Cut cut, SmoothedMotion motion) {}

    /**
     * The scene of a landing.
     *
     * @param untilS where the next event begins or the recording ends, s on the pelvis's clock
     * @param upper the upper back's part, or null; told only where the clocks are tied together
     */
    LandingScene scene(Event event, double untilS, Part pelvis, @Nullable Part upper) {
        WindowMaker.Cut cut = pelvis.cut();
        Set<LandingFlag> flags = EnumSet.noneOf(LandingFlag.class);
        Stance before = cut.before();
        double zeroFrom = pelvisStream.time(cut.window().from());
        double zeroTo = before == null ? zeroFrom : before.endS();
        if (before == null) {
            flags.add(LandingFlag.NO_QUIET_START);
            zeroFrom = event.startS();
            zeroTo = event.startS();
        }
        flags.addAll(doubts(mountings.at(Place.PELVIS, event.contactS()).method()));
        if (upper != null && clock != null) {
            flags.addAll(doubts(mountings
                    .at(Place.UPPER_BACK, clock.toUpperBack(event.contactS()))
                    .method()));
        }
        double from = event.startS() - BEFORE_S;
        double to = event.contactS() + AFTER_S;
        if (pelvisStream.hasGapWithin(from, to)
                || (upper != null
                        && clock != null
                        && upper.motion().motion().stream()
                                .hasGapWithin(clock.toUpperBack(from), clock.toUpperBack(to)))) {
            flags.add(LandingFlag.GAP);
        }
        LandingScene.Body pelvisBody = body(Place.PELVIS, pelvis, t -> t, event);
        LandingScene.Body upperBody =
                upper == null || clock == null ? null : body(Place.UPPER_BACK, upper, clock::toUpperBack, event);
        if (!pelvisBody.held() || (upperBody != null && !upperBody.held())) {
            flags.add(LandingFlag.STRAP_MOVED);
        }
        Stance after = cut.after();
        return new LandingScene(
                event,
                untilS,
                zeroFrom,
                zeroTo,
                after == null ? null : new LandingScene.Span(after.startS(), after.endS()),
                pelvisBody,
                upperBody,
                clock,
                flags);
    }

    /** What a way of mounting leaves open. */
    private static Set<LandingFlag> doubts(MountingMethod method) {
        return switch (method) {
            case AXES -> EnumSet.of(LandingFlag.AGAINST_GRAVITY);
            case GRAVITY_ONLY -> EnumSet.of(LandingFlag.AGAINST_GRAVITY, LandingFlag.HEADING_UNKNOWN);
            // Folding tells an axis, but a body may fold forward or back.
            case LANDINGS -> EnumSet.of(LandingFlag.HEADING_UNKNOWN);
            case BEND, TAKE_OFF, CROUCH -> EnumSet.noneOf(LandingFlag.class);
        };
    }

    private LandingScene.Body body(Place place, Part part, DoubleUnaryOperator ownClock, Event event) {
        double contactS = ownClock.applyAsDouble(event.contactS());
        Mounting mounting = mountings.at(place, contactS);
        return new LandingScene.Body(
                part.motion(),
                mounting.segmentFromSensor(),
                Math.toRadians(mounting.sigmaDeg()),
                mountings.give(place),
                mountings.held(
                        place, ownClock.applyAsDouble(event.startS()), contactS + LandingMeasurer.ANGLES_WITHIN_S));
    }
}

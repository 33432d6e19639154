package evenfall.fusion.landing;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.event.Event;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.posture.Motion;
import evenfall.fusion.posture.MotionWindow;
import evenfall.fusion.posture.SmoothedMotion;
import evenfall.fusion.posture.SmoothedMotion.Spread;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Measures one landing: moments, impact, braking, posture and balance, with the uncertainty of each. */
public final class LandingMeasurer {

    /** Angles are taken from contact until so long after it, s. */
    public static final double ANGLES_WITHIN_S = PostureMeasurer.WITHIN_S;
    /** They are told by what comes until so long after it, s. */
    public static final double SEEN_WITHIN_S = PostureMeasurer.WITHIN_S + PostureMeasurer.ROOM_S;
    /** The impact's peak is looked for until so long after contact, s. */
    public static final double PEAK_WITHIN_S = MomentFinder.PEAK_AFTER_S;

    /** Feet leave the ground differently: simulated ones by 1.5 ms, people's by up to 10 (common practice, no source). */
    private static final double TAKEOFF_SIGMA_S = 0.0015;
    /** Sampling hides the fall of the force by so many intervals. */
    private static final double TAKEOFF_SIGMA_INTERVALS = 0.23;

    /** Feet touch the ground differently; simulated ones by this, s, */
    private static final double CONTACT_SIGMA_S = 0.0007;
    /** and sampling hides the first rise by so many intervals. */
    private static final double CONTACT_SIGMA_INTERVALS = 0.16;
    /** Give of strap and flesh under the braking, m. */
    private static final double DEPTH_SIGMA_M = 0.0005;
    /** Who stands moves up and down less than across; the smoother is told as much of both. So much of its sigma is true of a depth. */
    private static final double DEPTH_SHARE = 0.7;
    /** What smoothing leaves of the folding, deg/s, and what the straps' rocking adds for each g beside what is seen of it. */
    private static final double COLLAPSE_SIGMA = 1.3;

    private static final double COLLAPSE_PER_G = 0.33;

    /** A turn that is missed at once shows, smoothed, as a rate over so long; less where the folding is not fastest there, s. */
    private static final double COLLAPSE_JUMP_S = 0.1;

    /** A person who stands quietly is not upright to the last: so far the pelvis leans to a side, rad, */
    private static final double PELVIS_STANCE_LEAN = Math.toRadians(0.5);
    /** and so far the trunk; both as the simulated bodies do, people are likely to lean more. */
    private static final double TRUNK_STANCE_LEAN = Math.toRadians(0.9);

    /** Of an accelerometer's scale that lies within a hundredth either way: 0.01 / √3. */
    private static final double FORCE_SCALE = 0.006;

    /** Two places further apart in time than this are not the same lowest moment, s. */
    private static final double LOWEST_WITHIN_S = 0.2;

    /** Take-off is told from the force so long before and after it, s. */
    private static final double ABOUT_TAKEOFF_S = 0.1;
    /** Contact is told from the force so long before and after it, s. */
    private static final double ABOUT_CONTACT_S = 0.05;

    private final LandingScene scene;
    private final SegmentMotion pelvis;
    private final @Nullable SegmentMotion upperBack;
    private final Moments moments;
    private final @Nullable HiddenContact hidden;

    /** Whether the pelvis's gyroscope worked: else only times and blows are known. */
    private final boolean oriented;

    /** Whether the contact lies in or beside a long gap: how fast it was can only be guessed. */
    private final boolean contactUnseen;
    /** Whether a long gap hides part of what came after contact: how far and where to can only be guessed. */
    private final boolean brakeUnseen;

    private final Set<LandingFlag> flags;

    private LandingMeasurer(LandingScene scene) {
        this.scene = scene;
        this.flags = EnumSet.noneOf(LandingFlag.class);
        flags.addAll(scene.flags());
        this.pelvis = new SegmentMotion(scene.pelvis(), t -> t, scene.zeroFromS(), scene.zeroToS());
        this.upperBack = upperBack(scene, flags);
        Moments seen = new MomentFinder(
                        pelvis.motion(),
                        scene.event(),
                        scene.untilS(),
                        scene.pelvis().motion().window().gyroBias())
                .find();
        this.contactUnseen =
                LongGap.within(pelvis, seen.contactS() - ABOUT_CONTACT_S, seen.contactS() + ABOUT_CONTACT_S);
        this.brakeUnseen =
                LongGap.within(pelvis, seen.contactS() - ABOUT_CONTACT_S, seen.contactS() + PostureMeasurer.WITHIN_S);
        if (brakeUnseen) {
            seen = new Moments(seen.takeoffS(), seen.contactS(), seen.peakS(), null, seen.settledS());
        }
        this.oriented = !DeadGyroscope.at(pelvis.motion(), seen.contactS());
        this.hidden = HiddenContact.at(pelvis.motion(), seen.contactS());
        this.moments = oriented ? seen : new Moments(seen.takeoffS(), seen.contactS(), seen.peakS(), null, null);
    }

    private static @Nullable SegmentMotion upperBack(LandingScene scene, Set<LandingFlag> flags) {
        LandingScene.Body body = scene.upperBack();
        ClockMap clock = scene.clock();
        if (body == null || clock == null) {
            return null;
        }
        if (DeadGyroscope.at(
                body.motion().motion(), clock.toUpperBack(scene.event().contactS()))) {
            flags.add(LandingFlag.DEAD_SENSOR);
            return null;
        }
        return new SegmentMotion(body, clock::toUpperBack, scene.zeroFromS(), scene.zeroToS());
    }

    /**
     * A landing with its chart.
     *
     * @param landing the measures
     * @param trace the signals
     */
    public record Measured(Landing landing, LandingTrace trace) {}

    /** Measures the landing of a scene; {@code index} is its place among the recording's events. */
    public static Measured measure(LandingScene scene, int index) {
        LandingMeasurer measurer = new LandingMeasurer(scene);
        return new Measured(
                measurer.landing(index), TraceMaker.make(measurer.pelvis, measurer.upperBack, measurer.moments));
    }

    /** The moments of a landing alone: less work than all its measures. */
    public static Moments moments(SmoothedMotion pelvis, Event event, double untilS) {
        return new MomentFinder(pelvis.motion(), event, untilS, pelvis.window().gyroBias()).find();
    }

    private Landing landing(int index) {
        Impact impact = ImpactMeasurer.measure(pelvis, upperBack, moments.contactS());
        if (!oriented) {
            return withoutOrientation(index, impact);
        }
        Fall fall = fall();
        PostureMeasurer postures = new PostureMeasurer(pelvis, upperBack, moments);
        Collapse collapse = postures.collapse();
        Braking braking = braking(fall, collapse == null ? null : collapse.degPerS());
        Steps steps = StepCounter.count(pelvis, moments, scene.untilS());
        Balance balance = brakeUnseen
                ? new Balance(null, null, null, steps.count(), steps.direction(), null)
                : new BalanceMeasurer(pelvis, moments, scene.pelvis().headingSigma()).measure(scene.after(), steps);
        Posture posture = postures.measure(angleSigmas(impact));
        flag(impact, balance);
        Sigma sigma = sigma(fall, impact, braking, collapse);
        if (lowestUnsure()) {
            flags.add(LandingFlag.LOWEST_UNSURE);
        }
        Measures measures = new Measures(fall, impact, braking, posture, balance, sigma);
        return new Landing(index, EventKind.LANDING, moments, null, measures, flags);
    }

    private Landing withoutOrientation(int index, Impact impact) {
        Fall fall = new Fall(flight(), null, null);
        Braking braking = new Braking(null, null, null, null);
        Balance balance = new Balance(null, null, null, null, null, null);
        Posture posture = new Posture(null, null, null, null, null, null, null);
        flag(impact, balance);
        // Whether feet moved or the body came to rest, orientation alone tells.
        flags.removeAll(Set.of(LandingFlag.FEET_MOVED, LandingFlag.NOT_SETTLED));
        flags.add(LandingFlag.DEAD_SENSOR);
        Sigma sigma = sigma(fall, impact, braking, null);
        return new Landing(
                index,
                EventKind.LANDING,
                moments,
                null,
                new Measures(fall, impact, braking, posture, balance, sigma),
                flags);
    }

    private @Nullable Double flight() {
        Double takeoff = moments.takeoffS();
        return takeoff == null ? null : moments.contactS() - takeoff;
    }

    private Fall fall() {
        double speed =
                hidden == null ? -pelvis.motion().speedAt(moments.contactS()).z() : hidden.speed();
        return speed > 0 && !contactUnseen
                ? new Fall(flight(), speed, speed * speed / (2 * Gravity.STANDARD))
                : new Fall(flight(), null, null);
    }

    private Braking braking(Fall fall, @Nullable Double collapse) {
        Double lowest = moments.lowestS();
        if (lowest == null) {
            return new Braking(null, null, null, collapse);
        }
        Motion motion = pelvis.motion();
        double depth = (hidden == null ? motion.placeAt(moments.contactS()).z() : hidden.height())
                - motion.placeAt(lowest).z();
        Double height = fall.dropHeightM();
        Double mean = height == null || !(depth > 0) ? null : 1 + height / depth;
        return new Braking(depth, lowest - moments.contactS(), mean, collapse);
    }

    private void flag(Impact impact, Balance balance) {
        if (impact.clipped()) {
            flags.add(LandingFlag.CLIPPED);
        }
        SegmentMotion upper = upperBack;
        if (upper != null && ImpactMeasurer.clipped(upper.motion(), upper.ownTime(moments.contactS()))) {
            flags.add(LandingFlag.CLIPPED_UPPER_BACK);
        }
        if (upper == null || !PostureMeasurer.coversLanding(upper, moments.contactS())) {
            flags.add(LandingFlag.NO_UPPER_BACK);
        }
        if (moments.takeoffS() == null) {
            flags.add(LandingFlag.NO_TAKEOFF);
        }
        double measuredS = pelvis.motion().stream().durationS() - moments.contactS();
        if (measuredS < PostureMeasurer.WITHIN_S
                || (moments.lowestS() == null && measuredS < MomentFinder.LOWEST_WITHIN_S)) {
            flags.add(LandingFlag.CUT_SHORT);
        }
        if (moments.settledS() == null) {
            flags.add(LandingFlag.NOT_SETTLED);
        }
        if (balance.overFeet() == null && !brakeUnseen && (scene.after() != null || moments.settledS() != null)) {
            // Without a stance after it the person walked off, or nothing more was recorded.
            boolean over = scene.after() == null
                    && scene.untilS() >= pelvis.motion().stream().durationS();
            flags.add(over ? LandingFlag.CUT_SHORT : LandingFlag.FEET_MOVED);
        }
    }

    /** Whether the pelvis is as low at another time, within one sigma of the way between. */
    private boolean lowestUnsure() {
        Double lowest = moments.lowestS();
        if (lowest == null) {
            return false;
        }
        Motion motion = pelvis.motion();
        int last = MomentFinder.lastSinking(motion, moments.contactS(), scene.untilS());
        int other = -1;
        for (int i = motion.indexAt(moments.contactS()) + 1; i <= last; i++) {
            if (Math.abs(motion.time(i) - lowest) > LOWEST_WITHIN_S
                    && (other < 0 || motion.place(i).z() < motion.place(other).z())) {
                other = i;
            }
        }
        if (other < 0) {
            return false;
        }
        int low = motion.indexAt(lowest);
        double higher = motion.place(other).z() - motion.placeAt(lowest).z();
        double sigma = pelvis.smoothed().between(low, other).placeUp();
        return higher < Math.hypot(DEPTH_SIGMA_M, sigma);
    }

    private AngleSigmas angleSigmas(Impact impact) {
        AngleSigmas.Segment own = angleSigmas(scene.pelvis(), pelvis, PELVIS_STANCE_LEAN);
        SegmentMotion upper = upperBack;
        LandingScene.Body body = scene.upperBack();
        ClockMap clock = scene.clock();
        return new AngleSigmas(
                own,
                upper == null || body == null ? own : angleSigmas(body, upper, TRUNK_STANCE_LEAN),
                impact.peakG(),
                clock == null ? 0 : clock.sigmaMs() / 1000);
    }

    private AngleSigmas.Segment angleSigmas(LandingScene.Body body, SegmentMotion segment, double stanceLean) {
        Quaternion segmentFromSensor = body.segmentFromSensor();
        // How far the segment may lean to a side in the stance that its mounting calls upright.
        double level = body.motion().levelSigma(segmentFromSensor.rotateBack(Vector3.Y));
        return new AngleSigmas.Segment(
                body.headingSigma(),
                segment.turnSigmas(moments.contactS(), moments.contactS() + PostureMeasurer.WITHIN_S),
                new Vector3(
                        body.motion().rateScaleSigma(segmentFromSensor.rotateBack(Vector3.X)),
                        body.motion().rateScaleSigma(segmentFromSensor.rotateBack(Vector3.Y)),
                        body.motion().rateScaleSigma(segmentFromSensor.rotateBack(Vector3.UP))),
                Math.hypot(level, stanceLean));
    }

    private Sigma sigma(Fall fall, Impact impact, Braking braking, @Nullable Collapse collapse) {
        double unseen = hidden == null ? 0 : hidden.sigmaS();
        double gained = hidden == null ? 0 : hidden.speedSigma();
        double step = Math.max(stepAt(moments.contactS()), stepAt(moments.contactS() + MomentFinder.CONTACT_RISE_S));
        double seen = Math.hypot(CONTACT_SIGMA_S, CONTACT_SIGMA_INTERVALS * step);
        double contact = Math.hypot(seen, unseen);
        Spread atContact = pelvis.smoothed().at(pelvis.indexAt(moments.contactS()));
        double speed = Math.hypot(atContact.speedUp(), Math.hypot(Gravity.STANDARD * contact, gained));
        Double fallSpeed = fall.impactSpeedMS();
        Double lowest = moments.lowestS();
        Double depthSigma = lowest == null
                ? null
                : Math.hypot(
                        Math.hypot(DEPTH_SIGMA_M, fallSpeed == null ? 0 : fallSpeed * contact),
                        DEPTH_SHARE
                                * pelvis.smoothed()
                                        .between(pelvis.indexAt(moments.contactS()), pelvis.indexAt(lowest))
                                        .placeUp());
        Double heightSigma = fallSpeed == null ? null : Double.valueOf(fallSpeed * speed / Gravity.STANDARD);
        return new Sigma(
                contact,
                fall.flightS() == null ? null : Math.hypot(unseen, takeoffSigma(moments.takeoffS())),
                fallSpeed == null ? null : speed,
                heightSigma,
                peakSigma(impact),
                depthSigma,
                brakingSigma(fall, braking, heightSigma, depthSigma),
                collapse == null ? null : collapseSigma(impact, collapse));
    }

    /** First order propagation through 1 + h / d, the errors of height and depth taken as independent. */
    private static @Nullable Double brakingSigma(
            Fall fall, Braking braking, @Nullable Double heightSigma, @Nullable Double depthSigma) {
        Double height = fall.dropHeightM();
        Double depth = braking.depthM();
        return height == null || heightSigma == null || depthSigma == null || depth == null || depth <= 0
                ? null
                : Double.valueOf(Math.hypot(heightSigma / depth, height * depthSigma / (depth * depth)));
    }

    private double collapseSigma(Impact impact, Collapse collapse) {
        double squares = square(COLLAPSE_SIGMA)
                + square(COLLAPSE_PER_G * impact.peakG())
                + square(collapse.fastDegPerS())
                + square(turnUnseen(pelvis));
        return Math.sqrt(upperBack == null ? squares : squares + square(turnUnseen(upperBack)));
    }

    /** How far a folding rate may be off for what gaps of a segment's sensor and the impact hide of its turn, deg/s. */
    private double turnUnseen(SegmentMotion segment) {
        double from = segment.ownTime(moments.contactS());
        double to = segment.ownTime(moments.contactS() + PostureMeasurer.COLLAPSE_WITHIN_S);
        double squares = 0;
        for (MotionWindow.Jolt jolt : segment.smoothed().window().jolts()) {
            double at = segment.motion().stream().time(jolt.index());
            if (at >= from && at <= to) {
                squares += square(jolt.turn().along(segment.sideways()));
            }
        }
        return Math.toDegrees(Math.sqrt(squares)) / COLLAPSE_JUMP_S;
    }

    private static double square(double value) {
        return value * value;
    }

    /** What sampling, slow feet and a long gap leave of the take-off: with a gap it may lie anywhere up to its length away, s. */
    private double takeoffSigma(@Nullable Double takeoff) {
        if (takeoff == null) {
            return 0;
        }
        double seen = Math.hypot(TAKEOFF_SIGMA_S, TAKEOFF_SIGMA_INTERVALS * stepAt(takeoff - TakeoffFinder.LAG_S));
        return Math.hypot(
                Math.hypot(seen, TakeoffFinder.slownessSigma(pelvis.motion(), takeoff, moments.contactS())),
                LongGap.length(pelvis, takeoff - ABOUT_TAKEOFF_S, takeoff + ABOUT_TAKEOFF_S) / Math.sqrt(3));
    }

    /** How far samples lie apart about a moment of the pelvis's clock, s: more where one was lost. What gaps hide is counted elsewhere. */
    private double stepAt(double timeS) {
        double interval = 1 / pelvis.motion().stream().rateHz();
        double step = pelvis.motion().stepAt(timeS);
        return step > SensorStream.GAP_INTERVALS * interval ? interval : Math.max(interval, step);
    }

    private double peakSigma(Impact impact) {
        SensorStream stream = pelvis.motion().stream();
        int peak = pelvis.motion().from() + pelvis.motion().indexAt(moments.peakS());
        double between = peak < 1 || peak + 1 >= stream.size()
                ? 0
                : PeakBetweenSamples.sigma(
                        stream.resultant(peak - 1), stream.resultant(peak), stream.resultant(peak + 1));
        Estimate estimated = impact.peakEstimatedG();
        double cut = estimated == null ? 0 : estimated.value() - impact.peakG();
        double hidden = hiddenPeak() / Gravity.STANDARD - impact.peakG();
        return Math.hypot(
                Math.hypot(FORCE_SCALE * impact.peakG(), between / Gravity.STANDARD),
                Math.hypot(cut, Math.max(0, hidden)));
    }

    /**
     * How high the force may have been in the gaps of the impact, m/s²; 0 without any. The speeds on both sides tell what it was on
     * average, as far as what the gap may hide is known: as a triangle it rose twice that above the straight line between both ends.
     */
    private double hiddenPeak() {
        SmoothedMotion smoothed = pelvis.smoothed();
        SensorStream stream = smoothed.window().stream();
        double highest = 0;
        for (int k = 0; k < smoothed.window().jolts().size(); k++) {
            MotionWindow.Jolt jolt = smoothed.window().jolts().get(k);
            double endS = stream.time(jolt.index());
            double startS = stream.time(jolt.index() - 1);
            if (jolt.unseen()
                    && endS > moments.contactS() - MomentFinder.PEAK_BEFORE_S
                    && startS < moments.contactS() + MomentFinder.PEAK_AFTER_S) {
                double line = (stream.resultant(jolt.index() - 1) + stream.resultant(jolt.index())) / 2;
                double jump = Math.hypot(
                        smoothed.errors().jumps().get(k).norm(), jolt.speed().size());
                highest = Math.max(highest, line + 2 * jump / (endS - startS));
            }
        }
        return highest;
    }
}

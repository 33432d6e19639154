package evenfall.fusion.analysis;

import evenfall.fusion.alignment.DirectionMean;
import evenfall.fusion.alignment.HeadingMean;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.MountingFinder;
import evenfall.fusion.alignment.MountingMethod;
import evenfall.fusion.alignment.OpeningRoutine;
import evenfall.fusion.alignment.PrincipalAxis;
import evenfall.fusion.alignment.Stance;
import evenfall.fusion.alignment.StrapWatch;
import evenfall.fusion.alignment.Straying;
import evenfall.fusion.rotation.Quaternion;
import evenfall.fusion.rotation.SensorAxes;
import evenfall.fusion.rotation.Vector3;
import evenfall.ingest.place.Place;
import evenfall.ingest.recording.BodyAxes;
import evenfall.ingest.recording.Gravity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Decides how a sensor is mounted: by stated axes; else by what forward bends, directions of take-off and the trunk's crouches
 * before it say together, each as surely as it is; else by the folding in the landings; else by gravity alone.
 */
final class SegmentMounting {

    /** Take-offs of people scatter more than those of simulated bodies, which go straight ahead; what is seen counts, deg. */
    private static final double TRAVEL_SCATTER_DEG = 1.3;

    private static final double TRAVEL_FLOOR_DEG = 0.4;
    /** The upper back also moves as the trunk leans and turns, deg. */
    private static final double UPPER_TRAVEL_FLOOR_DEG = 1.7;

    private static final double CROUCH_SCATTER_DEG = 0.7;
    private static final double CROUCH_FLOOR_DEG = 0.22;
    private static final double FOLDING_SIGMA_DEG = 14;
    private static final double FOLDING_FLOOR_DEG = 6;
    private static final double FOLDING_S = 0.5;
    /** One standard deviation of a heading by bends beyond which they are called crooked, deg. */
    private static final double CROOKED_DEG = 1.5;

    /** A strap that slips by an angle in gravity turns about the vertical by about as much. */
    private static final double SLIP_SIGMA_PART = 0.7;

    /** About so many samples, spread evenly, tell the mean force of a whole stream: common practice, no source. */
    private static final int ENOUGH_SAMPLES = 1000;

    private final Place place;
    private final SensorReading reading;
    private final UnaryOperator<Vector3> correct;
    private final OpeningRoutine opening;
    private final TakeoffHeadings takeoffs;

    /**
     * A sensor's mounting.
     *
     * @param correct takes the sensor's own bias and scale error out of a mean force, m/s²
     */
    SegmentMounting(
            Place place,
            SensorReading reading,
            UnaryOperator<Vector3> correct,
            OpeningRoutine opening,
            TakeoffHeadings takeoffs) {
        this.place = place;
        this.reading = reading;
        this.correct = correct;
        this.opening = opening;
        this.takeoffs = takeoffs;
    }

    /**
     * The mounting from the start and after each move of the strap.
     *
     * @param moves in order of time
     * @param shown what was shown before the first of them
     * @param straying how far the person strays
     */
    MountingTimeline timeline(List<StrapWatch.Move> moves, Shown shown, Straying straying) {
        double openingS = openingS();
        Mounting first = find(shown, straying);
        List<MountingTimeline.Part> parts = new ArrayList<>();
        parts.add(new MountingTimeline.Part(Double.NEGATIVE_INFINITY, first));
        Mounting last = first;
        for (int k = 0; k < moves.size(); k++) {
            if (moves.get(k).atS() > openingS) {
                double untilS = k + 1 < moves.size() ? moves.get(k + 1).atS() : Double.POSITIVE_INFINITY;
                last = moved(last, moves.get(k), untilS, straying);
                parts.add(new MountingTimeline.Part(moves.get(k).atS(), last));
            }
        }
        return new MountingTimeline(parts);
    }

    /** Whether there were bends, but too crooked to tell much beside the drops. */
    boolean hasCrookedBends(Mounting taken) {
        return !opening.bends().isEmpty()
                && taken.method() != MountingMethod.BEND
                && taken.method() != MountingMethod.AXES
                && byBends(correct.apply(upForce(Double.POSITIVE_INFINITY))).sigmaDeg() > CROOKED_DEG;
    }

    /** The mounting by the bends, of which there are some, of a person who strays as usual. */
    private Mounting byBends(Vector3 up) {
        return MountingFinder.ofBends(up, opening.bends(), Straying.USUAL);
    }

    private double openingS() {
        return opening.bends().isEmpty() ? 0 : opening.bends().get(0).startS();
    }

    /**
     * Turns about the vertical, which gravity does not show but the take-offs do.
     *
     * @param timeline the mounting without them
     * @param other the other sensor with its own, or null
     */
    List<StrapWatch.Move> turns(
            MountingTimeline timeline, @Nullable SegmentMounting other, @Nullable MountingTimeline otherTimeline) {
        double[] own = takeoffDeg(timeline, place == Place.UPPER_BACK);
        double[] others =
                other == null || otherTimeline == null ? unknown(own.length) : other.takeoffDeg(otherTimeline, false);
        List<StrapWatch.Move> turns = new ArrayList<>();
        int from = 0;
        for (int k = 1; k <= own.length; k++) {
            if (k == own.length || !timeline.isOne(takeoffs.contactS(k - 1), takeoffs.contactS(k))) {
                int split = TurnWatch.find(own, others, from, k);
                if (split > from) {
                    turns.add(turn(timeline, own, from, split, k));
                }
                from = k;
            }
        }
        return turns;
    }

    private StrapWatch.Move turn(MountingTimeline timeline, double[] deg, int from, int split, int to) {
        double atS = (takeoffs.contactS(split - 1) + takeoffs.contactS(split)) / 2;
        Vector3 up = timeline.at(atS).segmentFromSensor().rotateBack(Vector3.UP);
        return new StrapWatch.Move(atS, atS, Math.toRadians(Math.abs(TurnWatch.step(deg, from, split, to))), up, up);
    }

    private double[] takeoffDeg(MountingTimeline timeline, boolean crouches) {
        double[] deg = unknown(takeoffs.size());
        for (int k = 0; k < deg.length; k++) {
            Quaternion mounting = timeline.at(takeoffs.contactS(k)).segmentFromSensor();
            Vector3 up = mounting.rotateBack(Vector3.UP);
            Vector3 forward = crouches ? takeoffs.crouch(k, up, mounting.rotateBack(Vector3.Y)) : null;
            forward = forward == null ? takeoffs.travel(k, up) : forward;
            if (forward != null) {
                Vector3 seen = mounting.rotate(forward);
                deg[k] = Math.toDegrees(Math.atan2(seen.y(), seen.x()));
            }
        }
        return deg;
    }

    private static double[] unknown(int n) {
        double[] deg = new double[n];
        Arrays.fill(deg, Double.NaN);
        return deg;
    }

    /** The person stands after the move as before it; which way the sensor faces, the take-offs after it tell. */
    private Mounting moved(Mounting before, StrapWatch.Move move, double untilS, Straying straying) {
        Vector3 oldUp = correct.apply(move.before().times(Gravity.STANDARD));
        Vector3 newUp = correct.apply(move.after().times(Gravity.STANDARD));
        Quaternion slip = Quaternion.between(newUp, oldUp);
        Quaternion least = before.segmentFromSensor().times(slip);
        double leastSigma = Math.hypot(before.sigmaDeg(), SLIP_SIGMA_PART * Math.toDegrees(move.angle()));
        // The stance of the body before the move is kept; only the heading is looked for again.
        List<Mounting> sources = new ArrayList<>(List.of(new Mounting(least, before.method(), leastSigma)));
        DirectionMean travel = travels(newUp, move.atS(), untilS);
        DirectionMean crouch = crouches(newUp, least.rotateBack(Vector3.Y), move.atS(), untilS);
        addTakeoffs(sources, newUp, travel, crouch, straying);
        Mounting joint = HeadingMean.of(sources);
        double turn = Math.toRadians(HeadingMean.turnDeg(sources.get(0), joint));
        return new Mounting(Quaternion.about(Vector3.UP, -turn).times(least), joint.method(), joint.sigmaDeg());
    }

    /** Adds what take-offs tell: where they go, and how the trunk crouches before them. */
    private void addTakeoffs(
            List<Mounting> sources,
            Vector3 up,
            @Nullable DirectionMean travel,
            @Nullable DirectionMean crouch,
            Straying straying) {
        if (travel != null) {
            sources.add(ofTravel(up, travel, straying));
        }
        if (crouch != null) {
            double sigma = crouch.sigmaDeg(straying.factor() * CROUCH_SCATTER_DEG, CROUCH_FLOOR_DEG);
            sources.add(MountingFinder.ofForward(up, crouch.direction(), MountingMethod.CROUCH, sigma));
        }
    }

    private Mounting ofTravel(Vector3 up, DirectionMean travel, Straying straying) {
        double floor = place == Place.PELVIS ? TRAVEL_FLOOR_DEG : UPPER_TRAVEL_FLOOR_DEG;
        double sigma = travel.sigmaDeg(straying.factor() * TRAVEL_SCATTER_DEG, floor);
        return MountingFinder.ofForward(up, travel.direction(), MountingMethod.TAKE_OFF, sigma);
    }

    /**
     * What a sensor shows before its strap first moves.
     *
     * @param up mean force in the stance that is called upright
     * @param travel where the take-offs go, or null
     * @param aside whether they go by far not where straight bends face: who jumps aside faces ahead
     * @param crouch how the trunk crouches, or null
     */
    record Shown(
            Vector3 up,
            @Nullable DirectionMean travel,
            boolean aside,
            @Nullable DirectionMean crouch) {

        private @Nullable DirectionMean ahead() {
            return aside ? null : travel;
        }
    }

    /**
     * Looks at what comes before the first move.
     *
     * @param moves in order of time
     */
    Shown shown(List<StrapWatch.Move> moves) {
        double untilS = MountingTimeline.firstAfter(moves, openingS());
        Vector3 up = correct.apply(upForce(untilS));
        DirectionMean travel = travels(up, Double.NEGATIVE_INFINITY, untilS);
        boolean aside = travel != null && isAside(up, travel);
        Mounting forward = byBendsOrTravel(up, aside ? null : travel, Straying.USUAL);
        DirectionMean crouch = forward == null
                ? null
                : crouches(up, forward.segmentFromSensor().rotateBack(Vector3.Y), Double.NEGATIVE_INFINITY, untilS);
        return new Shown(up, travel, aside, crouch);
    }

    private boolean isAside(Vector3 up, DirectionMean travel) {
        if (opening.bends().isEmpty()) {
            return false;
        }
        Mounting bends = byBends(up);
        return bends.sigmaDeg() <= CROOKED_DEG && !travel.agreesWith(forward(bends));
    }

    /** How far the person strays by the bends, the pelvis's take-offs, the trunk's crouches. */
    Straying straying(Shown shown) {
        Straying straying = MountingFinder.strayingOf(shown.up(), opening.bends());
        DirectionMean travel = shown.ahead();
        if (place == Place.PELVIS && travel != null) {
            straying = straying.with(travel.squaresDeg(), travel.count(), TRAVEL_SCATTER_DEG);
        }
        DirectionMean crouch = shown.crouch();
        return crouch == null ? straying : straying.with(crouch.squaresDeg(), crouch.count(), CROUCH_SCATTER_DEG);
    }

    /** By how much the take-offs go aside from where the bends face, deg; 0 where they go there about, or either tells nothing. */
    double asideDeg(Shown shown) {
        DirectionMean travel = shown.travel();
        return travel == null || !shown.aside() || reading.recording().axes() != null
                ? 0
                : Math.toDegrees(travel.direction().angleTo(forward(byBends(shown.up()))));
    }

    private @Nullable Mounting byBendsOrTravel(Vector3 up, @Nullable DirectionMean travel, Straying straying) {
        if (!opening.bends().isEmpty()) {
            return MountingFinder.ofBends(up, opening.bends(), straying);
        }
        return travel == null ? null : ofTravel(up, travel, straying);
    }

    private Mounting find(Shown shown, Straying straying) {
        BodyAxes axes = reading.recording().axes();
        if (axes != null) {
            return MountingFinder.ofAxes(axes);
        }
        List<Mounting> sources = new ArrayList<>();
        if (!opening.bends().isEmpty()) {
            sources.add(MountingFinder.ofBends(shown.up(), opening.bends(), straying));
        }
        addTakeoffs(sources, shown.up(), shown.ahead(), shown.crouch(), straying);
        if (!sources.isEmpty()) {
            return HeadingMean.of(sources);
        }
        Mounting folding = ofFolding(shown.up());
        return folding != null ? folding : MountingFinder.ofGravity(shown.up());
    }

    /** Force in the opening stance, else in the longest stance before the strap first moves, else in the whole stream. */
    private Vector3 upForce(double untilS) {
        Stance best = opening.stance();
        if (best == null || best.endS() > untilS) {
            best = null;
            for (Stance stance : reading.stances()) {
                boolean longer = best == null || stance.lengthS() > best.lengthS();
                best = longer && stance.endS() <= untilS ? stance : best;
            }
        }
        return best != null ? best.force() : forceOverAll();
    }

    private Vector3 forceOverAll() {
        int size = reading.stream().size();
        Vector3 sum = SensorAxes.forceSum(reading.stream(), 0, size, Math.max(1, size / ENOUGH_SAMPLES));
        return sum.norm() > 0 ? sum : Vector3.UP;
    }

    private List<Vector3> between(double fromS, double untilS, IntFunction<@Nullable Vector3> heading) {
        List<Vector3> headings = new ArrayList<>();
        for (int k = 0; k < takeoffs.size(); k++) {
            Vector3 found = takeoffs.contactS(k) < fromS || takeoffs.contactS(k) > untilS ? null : heading.apply(k);
            if (found != null) {
                headings.add(found);
            }
        }
        return headings;
    }

    private @Nullable DirectionMean travels(Vector3 up, double fromS, double untilS) {
        return DirectionMean.of(between(fromS, untilS, k -> takeoffs.travel(k, up)));
    }

    private static Vector3 forward(Mounting mounting) {
        return mounting.segmentFromSensor().rotateBack(Vector3.X);
    }

    /** The pelvis crouches too little and too crookedly. */
    private @Nullable DirectionMean crouches(Vector3 up, Vector3 left, double fromS, double untilS) {
        return place == Place.UPPER_BACK
                ? DirectionMean.of(between(fromS, untilS, k -> takeoffs.crouch(k, up, left)))
                : null;
    }

    private @Nullable Mounting ofFolding(Vector3 up) {
        if (takeoffs.size() == 0) {
            return null;
        }
        PrincipalAxis axis = new PrincipalAxis();
        double turning = 0;
        for (int k = 0; k < takeoffs.size(); k++) {
            double contactS = takeoffs.contactS(k);
            int from = Math.max(0, reading.stream().indexAtOrBefore(contactS));
            for (int i = from; i < reading.stream().size() && reading.stream().time(i) < contactS + FOLDING_S; i++) {
                Vector3 rate = SensorAxes.turnRate(reading.stream(), i).across(up.normalised());
                axis.add(rate.x(), rate.y(), rate.z(), 1);
                axis.addSense(rate.x(), rate.y(), rate.z());
                turning += rate.norm();
            }
        }
        if (!(turning > 0)) {
            return null;
        }
        Vector3 left = axis.solve().direction();
        double sigma = Math.hypot(FOLDING_SIGMA_DEG / Math.sqrt(takeoffs.size()), FOLDING_FLOOR_DEG);
        return new Mounting(MountingFinder.segmentFromSensor(up, left), MountingMethod.LANDINGS, sigma);
    }
}

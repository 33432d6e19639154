package evenfall.fusion.event;

/**
 * The limits by which the finder tells a landing from the rest. Each has a physical meaning and lies between what
 * landings and other movements showed, with room on both sides (the figures stand in the method's chapter on finding
 * landings). Speeds are vertical, in m/s; times in s; angles in rad.
 *
 * @param rest standing still before and after
 * @param body what every landing has
 * @param drop a drop without a jump
 * @param hop a jump that comes back to the same ground
 * @param crouch going down before a jump
 * @param steps running and hopping
 * @param fall ending off the feet
 */
record EventParams(Rest rest, Body body, Drop drop, Hop hop, Crouch crouch, Steps steps, Fall fall) {

    /** The limits in use. */
    static final EventParams DEFAULT = new EventParams(
            Rest.DEFAULT, Body.DEFAULT, Drop.DEFAULT, Hop.DEFAULT, Crouch.DEFAULT, Steps.DEFAULT, Fall.DEFAULT);

    /**
     * Standing still before and after. A landing with some flight may go on walking, and one whose flight is so long
     * that no step reaches it needs neither.
     *
     * @param before at most this long before the way down begins
     * @param after at most this long after the brake begins
     * @param goesOnLight time with little weight on the feet from which rest after is not asked for
     * @param longFall speed lost on the way down, which no step reaches together with {@code longLight}
     * @param longLight time with little weight on the feet
     */
    record Rest(double before, double after, double goesOnLight, double longFall, double longLight) {
        static final Rest DEFAULT = new Rest(1.5, 2.4, 0.25, 2.9, 0.28);
    }

    /**
     * What every landing has.
     *
     * @param tilt greatest angle between the stances before and after: a fall ends beyond
     * @param swing greatest angle from the stance before on the way
     * @param brakeShare least share of the speed gained downward that the brake takes away: standing up quickly ends in
     *     a lightness without a brake
     * @param sunkTilt what {@code tilt} is if the person sinks on before coming to rest: into a sit
     * @param sinks least downward speed of such sinking
     */
    record Body(double tilt, double swing, double brakeShare, double sunkTilt, double sinks) {
        static final Body DEFAULT = new Body(Math.toRadians(40), Math.toRadians(60), 0.32, Math.toRadians(32), 1);
    }

    /**
     * A drop without a jump, to be told from sitting down: that is slower, or gives way for longer.
     *
     * @param down least downward speed
     * @param light least time with little weight on the feet
     * @param brake least mean of the brake, m/s²
     * @param sure downward speed from which the brake may be longer: no chair is that low
     * @param upShare greatest upward speed at take-off, as a share of the downward speed
     */
    record Drop(double down, double light, double brake, double sure, double upShare) {
        static final Drop DEFAULT = new Drop(1.9, 0.17, 8, 2.6, 0.55);
    }

    /**
     * A jump, to be told from standing up (which does not come back down) and from a failed attempt at it (which
     * swings the pelvis and ends in more brake than it had drop).
     *
     * @param up least upward speed at take-off
     * @param lost least speed lost on the way down
     * @param light least time with little weight on the feet
     * @param returned least downward speed, as a share of the upward
     * @param brakeShare greatest share of the speed gained downward that the brake takes away: a jump gains it twice,
     *     coming up and going down, and the brake takes away the second half
     * @param swing greatest angle from the stance before in a slight hop
     * @param slight upward speed up to which a hop is slight
     * @param swingPerSpeed what the angle may grow by with more upward speed, rad per m/s
     * @param evenBrake up to this share of the speed gained downward a brake ends a free flight: a seat throws back
     * @param flown greatest speed lost on the way down, as a share of what gravity takes during lightness: who gives up
     *     standing up sinks before falling
     * @param flownSwing greatest angle from the stance before in a flight of which both are true: a belt swings too
     */
    record Hop(
            double up,
            double lost,
            double light,
            double returned,
            double brakeShare,
            double swing,
            double slight,
            double swingPerSpeed,
            double evenBrake,
            double flown,
            double flownSwing) {
        static final Hop DEFAULT = new Hop(
                0.3,
                0.75,
                0.075,
                0.4,
                0.95,
                Math.toRadians(18),
                0.8,
                Math.toRadians(15),
                0.85,
                1.45,
                Math.toRadians(40));
    }

    /**
     * A counter-movement: a crouch from rest whose brake is the push for the larger descent that follows.
     *
     * @param larger least of that descent's speed lost since its crest, as a share of the crouch's
     * @param within longest time from the fastest moment of the one to that of the other
     */
    record Crouch(double larger, double within) {
        static final Crouch DEFAULT = new Crouch(1.25, 0.8);
    }

    /**
     * Running and hopping: neighbours of like strength. A counter-movement, which starts from rest, is none; a hop
     * that catches a landing is weaker than it.
     *
     * @param near time within which one neighbour counts
     * @param share its strength, as a share of one's own
     * @param around time within which two neighbours count
     * @param shareOfTwo the strength of the weaker of them
     * @param catching time after a landing within which a weaker one catches it
     * @param catchShare what weaker means, as a share of the speed lost on the way down
     * @param catchUp upward speed below which a hop is slight: a new jump from standing is higher
     * @param slightCatchShare what weaker means for a slight one
     * @param gap longest time between contacts of a run
     * @param contacts least number of contacts of a run
     * @param contactsJumped the same where one of them drops or jumps as a landing does
     * @param strength least strength of a contact of a run
     * @param light least median of the times with little weight in a run: walking has hardly any
     * @param flown time with little weight from which a contact ends a jump, whatever is around it: no step flies so long
     */
    record Steps(
            double near,
            double share,
            double around,
            double shareOfTwo,
            double catching,
            double catchShare,
            double catchUp,
            double slightCatchShare,
            double gap,
            int contacts,
            int contactsJumped,
            double strength,
            double light,
            double flown) {
        static final Steps DEFAULT = new Steps(0.75, 0.6, 1.3, 0.45, 1.8, 0.5, 0.8, 0.65, 0.8, 4, 2, 0.6, 0.1, 0.4);
    }

    /**
     * Ending off the feet.
     *
     * @param tilt least angle between before and after
     * @param peak least resultant of the impact, m/s²
     * @param lost least speed lost on the way down
     * @param gap impacts within this time are one fall
     */
    record Fall(double tilt, double peak, double lost, double gap) {
        static final Fall DEFAULT = new Fall(Math.toRadians(46), 20, 0.7, 3);
    }
}

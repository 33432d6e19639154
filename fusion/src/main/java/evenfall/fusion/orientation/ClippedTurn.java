package evenfall.fusion.orientation;

/**
 * Makes up for what one gyroscope axis does not show while it stands at full scale.
 *
 * <p>Above full scale the turn rate is taken to run on a cubic that leaves and comes back with the slopes seen just before
 * and just after. Of its area, {@code T² (s₀ + s₁) / 12} over the time {@code T}, less is believed the more it is against
 * what was read, since steep slopes do not last. Looking ahead, the cubic itself is added while it lasts. Looking only
 * back, a rise that starts with the slope before and dies down is added while it lasts, and what it was short of the area
 * once the slope after is seen; less is believed the longer it lasted too. Part of the doubt is told while it lasts, so
 * that what force tells meanwhile is heard.
 */
final class ClippedTurn {

    /** Less than this share of what was read is believed, however large the cubic: half of it where the cubic reaches it. */
    private static final double MOST = 4.0 / 3;

    /** Time in which a rise that was seen only from before dies down, s. */
    private static final double RISE_TIME = 0.3;

    /** Time after which slopes tell little of what lies between them, looking only back, s. */
    private static final double TELLING_TIME = 0.3;

    /** How far what is added may be off: a share of it, and a turn rate that noise in the slopes makes up, rad/s. */
    private static final double OFF_SHARE = 1;

    private static final double OFF_RATE = 0.01;

    /** Looking only back: the share of a rise that is in doubt while it lasts. */
    private static final double RISE_OFF = 0.25;

    /** The share of the area that is in doubt after that, and what that gains with each second it lasted. */
    private static final double LEFT_OFF = 0.42;

    private static final double LEFT_OFF_GAIN = 1.2;

    /** Longest time at full scale that slopes tell anything about, s. */
    static final double LONGEST = 0.5;

    /** Beyond that, the share of what is read by which the turn may be off. */
    private static final double UNKNOWN_SHARE = 1;

    private double rate;
    private double lastRate;
    private double slope;
    private double entrySlope;
    private double level;
    private double time;
    private double given;
    private boolean clips;
    private boolean ended;
    private boolean planned;
    private double plannedExitSlope;
    private double plannedTime;

    /** What is added to the turn of the sample, rad. */
    double added;

    /** How far that may be off, rad. */
    double doubt;

    /** Whether the axis stood at full scale at the last sample. */
    boolean clips() {
        return clips;
    }

    /**
     * Tells how a stretch at full scale that begins with the next sample will end.
     *
     * @param exitSlope how fast the rate falls after it, rad/s²
     * @param seconds from the last sample before it to the first after it, s
     */
    void plan(double exitSlope, double seconds) {
        planned = true;
        plannedExitSlope = exitSlope;
        plannedTime = seconds;
    }

    /** Takes the axis' reading (rad/s) over {@code seconds}. */
    void next(double reading, boolean atFullScale, double seconds) {
        added = 0;
        doubt = 0;
        lastRate = rate;
        rate = reading;
        if (atFullScale) {
            clip(seconds);
        } else if (clips) {
            clips = false;
            ended = !planned;
            time += seconds;
            if (planned) {
                doubt = OFF_SHARE * believedAhead() + OFF_RATE * plannedTime;
                planned = false;
            }
        } else if (ended) {
            ended = false;
            makeUp(seconds > 0 ? Math.signum(level) * (lastRate - rate) / seconds : 0);
        }
        slope = seconds > 0 ? (rate - lastRate) / seconds : 0;
    }

    private void clip(double seconds) {
        if (!clips) {
            if (ended) {
                // back at full scale at once: the slope after it was not seen
                ended = false;
                makeUp(entrySlope);
            }
            clips = true;
            level = rate;
            entrySlope = Math.max(0, Math.signum(level) * slope);
            time = 0;
            given = 0;
        }
        time += seconds;
        if (planned) {
            double u = time / plannedTime;
            double height = entrySlope * u * (1 - u) * (1 - u) + Math.max(0, plannedExitSlope) * u * u * (1 - u);
            double whole = (entrySlope + Math.max(0, plannedExitSlope)) * plannedTime * plannedTime / 12;
            double believed = whole > 0 ? believedAhead() / whole : 0;
            added = Math.signum(level) * believed * height * plannedTime * seconds;
        } else if (time <= LONGEST) {
            double rise = entrySlope * time * StrictMath.exp(-time / RISE_TIME);
            double part = rise / (1 + entrySlope * time / (2 * Math.abs(level))) * seconds;
            // squares of these add up to the square of the whole rise's
            doubt = RISE_OFF * Math.sqrt(part * (2 * given + part));
            given += part;
            added += Math.signum(level) * part;
        } else {
            doubt = UNKNOWN_SHARE * Math.abs(rate) * seconds;
        }
    }

    private void makeUp(double exitSlope) {
        if (time <= LONGEST) {
            double area = believed(exitSlope);
            added += Math.signum(level) * (area - given);
            doubt = (LEFT_OFF + LEFT_OFF_GAIN * time) * area + OFF_RATE * time;
        }
    }

    private double believedAhead() {
        double area = area(plannedExitSlope, plannedTime);
        return area / (1 + large(area, plannedTime));
    }

    private double believed(double exitSlope) {
        double area = area(exitSlope, time);
        double large = large(area, time);
        double lasting = time / TELLING_TIME;
        return area / Math.sqrt(1 + large * large + lasting * lasting * lasting * lasting);
    }

    private double area(double exitSlope, double seconds) {
        return seconds * seconds * (entrySlope + Math.max(0, exitSlope)) / 12;
    }

    /** How large an area is against what was read. */
    private double large(double area, double seconds) {
        double most = MOST * Math.abs(level) * seconds;
        return most > 0 ? area / most : 0;
    }
}

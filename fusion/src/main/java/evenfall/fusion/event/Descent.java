package evenfall.fusion.event;

/**
 * A way down followed by a brake: what every landing is, and every step, and sitting down. Times in s on the stream's
 * clock, speeds vertical in m/s, angles in rad.
 *
 * @param start when speed downward begins to grow
 * @param takeoff when the feet begin to carry little; {@code start} if they never do
 * @param contact when they carry again; {@code turn} if there was no lightness
 * @param peak when the resultant is largest, from contact to the end of the brake
 * @param turn when downward speed is greatest
 * @param braked when it has been stopped
 * @param peakForce the resultant there, m/s²
 * @param fallen speed lost from the fastest upward to the fastest downward moment
 * @param fallenSinceCrest the same since the last crest of the speed: smaller where a brake rings
 * @param brake speed taken away after {@code turn}
 * @param brakeRate mean rate of the first half of that, m/s²
 * @param light time with little weight on the feet
 * @param up upward speed at the start, against rest before; NaN without one
 * @param downFromBefore downward speed, against rest before; NaN without one
 * @param downFromAfter downward speed, against rest after; NaN without one
 * @param restBefore time since the last rest; infinite without one
 * @param restAfter time from {@code turn} to the next rest; infinite without one
 * @param tilt angle between the stances before and after: the smaller of what the orientation says, which a hard impact
 *     or a drifting filter may upset, and what the mean force says, which a push to the side may
 * @param swing largest angle from the stance before, on the way down and in the brake
 * @param fromRest whether the way down begins at rest, without a push upward
 */
record Descent(
        double start,
        double takeoff,
        double contact,
        double peak,
        double turn,
        double braked,
        double peakForce,
        double fallen,
        double fallenSinceCrest,
        double brake,
        double brakeRate,
        double light,
        double up,
        double downFromBefore,
        double downFromAfter,
        double restBefore,
        double restAfter,
        double tilt,
        double swing,
        boolean fromRest) {

    /** What makes it comparable to its neighbours: the smaller of its drop and its brake. */
    double strength() {
        return Math.min(fallenSinceCrest, brake);
    }

    /** Downward speed: the median of what rest before, rest after and the brake say, or the least without both rests. */
    double down() {
        if (Double.isNaN(downFromBefore)) {
            return Double.isNaN(downFromAfter) ? brake : Math.min(downFromAfter, brake);
        }
        if (Double.isNaN(downFromAfter)) {
            return Math.min(downFromBefore, brake);
        }
        double larger = Math.max(downFromBefore, downFromAfter);
        double smaller = Math.min(downFromBefore, downFromAfter);
        return Math.max(smaller, Math.min(larger, brake));
    }

    /** Upward speed at the start: against rest before, else what was lost on the way beyond the downward speed. */
    double upward() {
        return Double.isNaN(up) ? fallen - down() : up;
    }
}

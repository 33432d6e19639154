package evenfall.report.weeks;

/**
 * Landings from one height.
 *
 * @param heightM drop height, m: as noted, or where none is, as measured to a tenth
 * @param left landings on the left foot
 * @param right landings on the right foot
 * @param both landings on both feet
 * @param unknown landings whose foot is not noted
 * @param held of all of them, those in which form was held
 */
public record HeightCount(double heightM, int left, int right, int both, int unknown, int held) {

    /** All of them. */
    public int all() {
        return left + right + both + unknown;
    }
}

package evenfall.report.log;

/**
 * One note for a range of landings.
 *
 * @param first index of the first landing it holds for, from 1
 * @param last index of the last one
 * @param note what is noted
 */
public record RangeNote(int first, int last, LandingNote note) {

    /** Most landings a range may span: more than any session holds. */
    private static final int MOST = 100_000;

    public RangeNote {
        requireRange(first, last);
    }

    /** Refuses what is no range of landings. */
    static void requireRange(int first, int last) {
        if (first < 1 || last < first || last > MOST) {
            throw new IllegalArgumentException("landings " + first + " to " + last + " are no range");
        }
    }
}

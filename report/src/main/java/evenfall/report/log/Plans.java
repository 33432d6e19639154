package evenfall.report.log;

import java.util.List;

/** What was said of landings before they came. */
public final class Plans {

    private Plans() {}

    /**
     * What holds for a landing by what was said before it.
     *
     * @param contactS its contact, s on the pelvis's clock
     */
    public static LandingNote at(List<PlanEntry> entries, double contactS) {
        LandingNote note = LandingNote.NONE;
        for (PlanEntry entry : entries) {
            if (entry.fromS() <= contactS) {
                note = entry.note();
            }
        }
        return note;
    }
}

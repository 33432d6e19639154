package evenfall.report.rehearsal;

import java.util.List;

/**
 * What goes wrong in a rehearsal, the same every time for the same seed.
 *
 * @param lost share of lines or frames that are not sent, 0 to 1
 * @param damaged share of those sent in which some bits are turned, 0 to 1
 * @param silences when nothing is sent while the sensors go on
 * @param unplugged when the port is closed
 * @param seed of the chances
 */
public record Faults(double lost, double damaged, List<Stretch> silences, List<Stretch> unplugged, long seed) {

    /** All goes well. */
    public static final Faults NONE = new Faults(0, 0, List.of(), List.of(), 0);

    /** Refuses shares outside 0 to 1. */
    public Faults {
        if (!(lost >= 0 && lost <= 1 && damaged >= 0 && damaged <= 1)) {
            throw new IllegalArgumentException("shares from 0 to 1: " + lost + ", " + damaged);
        }
        silences = List.copyOf(silences);
        unplugged = List.copyOf(unplugged);
    }
}

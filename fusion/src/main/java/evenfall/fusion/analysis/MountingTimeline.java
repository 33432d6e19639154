package evenfall.fusion.analysis;

import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.alignment.StrapWatch;
import java.util.List;

/**
 * How one sensor is mounted over time.
 *
 * @param parts in order of time, at least one
 */
record MountingTimeline(List<Part> parts) {

    /**
     * A mounting that holds from a moment on.
     *
     * @param fromS s on the sensor's clock
     */
    record Part(double fromS, Mounting mounting) {}

    MountingTimeline {
        parts = List.copyOf(parts);
    }

    /** The mounting at a moment of the sensor's clock. */
    Mounting at(double timeS) {
        Mounting found = parts.get(0).mounting();
        for (Part part : parts) {
            found = part.fromS() <= timeS ? part.mounting() : found;
        }
        return found;
    }

    /** Whether one mounting holds at both of two moments, whichever comes first. */
    boolean isOne(double oneS, double otherS) {
        double earlierS = Math.min(oneS, otherS);
        double laterS = Math.max(oneS, otherS);
        for (Part part : parts) {
            if (part.fromS() > earlierS && part.fromS() <= laterS) {
                return false;
            }
        }
        return true;
    }

    /** The mounting that the opening routine tells. */
    Mounting first() {
        return parts.get(0).mounting();
    }

    /** When the strap first moves after a moment, s; infinite if never. */
    static double firstAfter(List<StrapWatch.Move> moves, double timeS) {
        return moves.stream()
                .mapToDouble(StrapWatch.Move::atS)
                .filter(at -> at > timeS)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}

package evenfall.ingest.finding;

import evenfall.ingest.place.Place;
import org.jspecify.annotations.Nullable;

/**
 * One remark on the quality of a recording.
 *
 * @param code what it is about
 * @param severity what it costs
 * @param message one sentence for a person: what, where, and what it costs or what to do
 * @param sensor the sensor it concerns, or null when it concerns the recording or the place is not known
 * @param atS when it first happens, s from the first sample of that sensor, or null when it has no moment
 */
public record Finding(
        FindingCode code,
        Severity severity,
        String message,
        @Nullable Place sensor,
        @Nullable Double atS) {

    /** Whether a sensor was read in a wrong unit or scale, so that nothing measured by it can be trusted. */
    public boolean isWrongUnit() {
        return code == FindingCode.UNITS && severity == Severity.ERROR;
    }

    /** The same finding, told of a sensor at a place. */
    public Finding at(Place place) {
        return new Finding(code, severity, message, place, atS);
    }
}

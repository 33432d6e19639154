package evenfall.ingest.wire;

/**
 * What became of the bytes of one port, or of several: of lines in the text form, of frames in the binary one.
 *
 * @param good samples that were given
 * @param damaged lines or frames whose checksum does not fit, that lost theirs where the port sends checksums, or that
 *     are no frame at all
 * @param unreadable lines or frames that are whole and yet no sample: rubbish, too long, impossible values, samples whose
 *     scale was never told
 * @param lost samples that were sent and did not come: by their sequence numbers in the binary form; in the text form,
 *     which numbers nothing, damaged and unreadable lines that begin as a sample does
 * @param unknown whole frames of a kind or version not known here: passed over, no fault of anybody
 */
public record WireCounts(long good, long damaged, long unreadable, long lost, long unknown) {

    /** Nothing has come. */
    public static final WireCounts NONE = new WireCounts(0, 0, 0, 0, 0);

    /** Counts without unknown frames. */
    public WireCounts(long good, long damaged, long unreadable, long lost) {
        this(good, damaged, unreadable, lost, 0);
    }

    /** Lines or frames that should have given a sample and did not. */
    public long bad() {
        return damaged + unreadable;
    }

    /** These and others together. */
    public WireCounts plus(WireCounts other) {
        return new WireCounts(
                good + other.good,
                damaged + other.damaged,
                unreadable + other.unreadable,
                lost + other.lost,
                unknown + other.unknown);
    }
}

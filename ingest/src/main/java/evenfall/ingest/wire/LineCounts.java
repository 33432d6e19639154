package evenfall.ingest.wire;

/**
 * What became of the lines of one port.
 *
 * @param good lines that gave a sample
 * @param damaged lines whose checksum does not fit, or that lost theirs where the port sends checksums
 * @param unreadable lines that are no sample: rubbish, too long, impossible values
 */
public record LineCounts(long good, long damaged, long unreadable) {

    /** Lines that gave no sample. */
    public long bad() {
        return damaged + unreadable;
    }
}

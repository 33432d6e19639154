package evenfall.ingest.recording;

/**
 * Missing time inside a stream.
 *
 * @param before index of the last sample before the gap; the first after it is {@code before + 1}
 * @param startS time of the last sample before, s on the stream's clock
 * @param endS time of the first sample after, s on the stream's clock
 */
public record Gap(int before, double startS, double endS) {

    /** Length of the missing time, s. */
    public double lengthS() {
        return endS - startS;
    }
}

package evenfall.fusion.filtering;

/**
 * Channel frequency classes of impact instrumentation (SAE J211-1, ISO 6487), to be run forward and backward.
 *
 * <p>The cut-off of each of the two passes is 2.0775 times the class, so that both together are 3 dB down near 1.667
 * times the class; the exact figure depends on the rate. A rate too low for a class is refused, never clamped.
 */
public enum ChannelClass {
    CFC_60(60),
    CFC_180(180),
    CFC_600(600),
    CFC_1000(1000);

    private static final double CUTOFF_PER_CLASS = 2.0775;

    private final int hertz;

    ChannelClass(int hertz) {
        this.hertz = hertz;
    }

    /** Cut-off of one pass, Hz. */
    public double designHz() {
        return CUTOFF_PER_CLASS * hertz;
    }

    /** Whether this class can be had at {@code rateHz}: its cut-off lies below half of it. */
    public boolean isRealisable(double rateHz) {
        return designHz() < rateHz / 2;
    }

    /**
     * The filter of one pass.
     *
     * @throws IllegalArgumentException if the rate is too low for the class
     */
    public Biquad design(double rateHz) {
        if (isRealisable(rateHz)) {
            return Butterworth.lowPass(designHz(), rateHz);
        }
        throw new IllegalArgumentException("channel class " + hertz + " needs more than " + 2 * designHz()
                + " samples a second, and there are " + rateHz);
    }
}

package evenfall.report.form;

/**
 * How hard an athlete usually lands from one height.
 *
 * @param peakG the usual peak, g
 * @param spread one robust spread of the logarithm of a further peak: scatter between landings together with the error of
 *     {@code peakG}
 * @param landings how many it is taken from
 */
public record UsualImpact(double peakG, double spread, int landings) {

    /** So many spreads above usual, g. */
    public double above(double spreads) {
        return peakG * Math.exp(spreads * spread);
    }
}

package evenfall.fusion.accuracy;

import java.util.List;

/**
 * Errors in a few numbers; NaN where there is nothing to take them from.
 *
 * @param count of values that could have been measured
 * @param missing of which none was given
 * @param rms root mean square
 * @param bias mean
 * @param largest size of the largest
 * @param withinOne per cent of those with a sigma that lie within one
 * @param withinTwo within two
 */
record ErrorSummary(
        int count, int missing, double rms, double bias, double largest, double withinOne, double withinTwo) {

    static ErrorSummary of(List<LandingErrors.One> errors) {
        double[] sizes = errors.stream()
                .mapToDouble(LandingErrors.One::error)
                .filter(Double::isFinite)
                .toArray();
        double sum = 0;
        double squares = 0;
        double largest = 0;
        for (double e : sizes) {
            sum += e;
            squares += e * e;
            largest = Math.max(largest, Math.abs(e));
        }
        int n = sizes.length;
        return new ErrorSummary(
                errors.size(),
                errors.size() - n,
                n == 0 ? Double.NaN : Math.sqrt(squares / n),
                n == 0 ? Double.NaN : sum / n,
                n == 0 ? Double.NaN : largest,
                within(errors, 1),
                within(errors, 2));
    }

    private static double within(List<LandingErrors.One> errors, double sigmas) {
        return 100
                * errors.stream()
                        .filter(one -> Double.isFinite(one.error() / one.sigma()))
                        .mapToDouble(one -> Math.abs(one.error()) <= sigmas * one.sigma() ? 1 : 0)
                        .average()
                        .orElse(Double.NaN);
    }
}

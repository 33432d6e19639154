package evenfall.fusion.alignment;

/**
 * Where one signal is found in another.
 *
 * @param samples how many samples later the second has what the first has, between samples by a parabola through the
 *     best correlation and its neighbours
 * @param correlation the best correlation, -1 to 1
 */
public record Lag(double samples, double correlation) {

    /**
     * The lag, within a range, at which a stretch of {@code y} is most like a stretch of {@code x}.
     *
     * @param x first signal
     * @param from first sample of the stretch of x
     * @param length of the stretch
     * @param y second signal
     * @param lowest smallest lag tried
     * @param highest largest lag tried
     * @return the lag, or one of correlation 0 where the signals do not reach or the best lag is at the range's end
     */
    public static Lag between(double[] x, int from, int length, double[] y, int lowest, int highest) {
        double[] r = new double[highest - lowest + 1];
        int best = 0;
        for (int k = 0; k < r.length; k++) {
            r[k] = correlation(x, from, y, from + lowest + k, length);
            if (r[k] > r[best]) {
                best = k;
            }
        }
        if (best == 0 || best == r.length - 1) {
            return new Lag(Double.NaN, 0);
        }
        return new Lag(lowest + best + vertex(r[best - 1], r[best], r[best + 1]), r[best]);
    }

    /** Where a parabola through three values one apart has its top, counted from the middle one. */
    public static double vertex(double before, double middle, double after) {
        double bend = before - 2 * middle + after;
        return bend < 0 ? (before - after) / bend / 2 : 0;
    }

    private static double correlation(double[] x, int i, double[] y, int j, int n) {
        if (i < 0 || j < 0 || i + n > x.length || j + n > y.length) {
            return 0;
        }
        double sx = 0;
        double sy = 0;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int k = 0; k < n; k++) {
            double a = x[i + k];
            double b = y[j + k];
            sx += a;
            sy += b;
            xx += a * a;
            yy += b * b;
            xy += a * b;
        }
        double top = xy - sx * sy / n;
        double bottom = Math.sqrt(Math.max(0, xx - sx * sx / n) * Math.max(0, yy - sy * sy / n));
        return bottom > 0 ? top / bottom : 0;
    }
}

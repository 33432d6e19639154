package evenfall.report.chart;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Leaves out the samples a picture cannot show. First each pixel column keeps its first, lowest, highest and last
 * sample; then points go that lie closer than a tolerance to the line through those that stay (Douglas and
 * Peucker 1973, Cartographica 10(2), 112-122). The lowest and the highest sample of the whole always stay.
 */
final class Thinning {

    /** For a line that is looked at by itself, px. */
    static final double FINE = 0.2;

    private final double columnsPerUnit;
    private final double pixelsPerUnit;
    private final double tolerance;

    /** For a line that is looked at by itself. */
    Thinning(double columnsPerUnit, double pixelsPerUnit) {
        this(columnsPerUnit, pixelsPerUnit, FINE);
    }

    /**
     * @param columnsPerUnit pixel columns per unit of x
     * @param pixelsPerUnit pixels per unit of y
     * @param tolerance how far a point that goes may lie from the line, px
     */
    Thinning(double columnsPerUnit, double pixelsPerUnit, double tolerance) {
        if (!(columnsPerUnit > 0 && pixelsPerUnit > 0)) {
            throw new IllegalArgumentException("scales must be above 0");
        }
        this.columnsPerUnit = columnsPerUnit;
        this.pixelsPerUnit = pixelsPerUnit;
        this.tolerance = tolerance;
    }

    /**
     * The indices that stay, in order. A value that is no number stays too, as a break in the line.
     *
     * @param x ascending, at least as long as {@code y}'s part
     * @param from first index, inclusive
     * @param to last index, exclusive
     */
    int[] keep(double[] x, double[] y, int from, int to) {
        BitSet columns = new BitSet();
        int start = from;
        while (start < to) {
            if (!Double.isFinite(y[start])) {
                columns.set(start++);
                continue;
            }
            int end = start;
            while (end < to && Double.isFinite(y[end])) {
                end++;
            }
            columns.or(simplify(x, y, byColumn(x, y, start, end)));
            start = end;
        }
        return columns.stream().toArray();
    }

    private int[] byColumn(double[] x, double[] y, int from, int to) {
        BitSet kept = new BitSet();
        int i = from;
        while (i < to) {
            long column = (long) Math.floor(x[i] * columnsPerUnit);
            int low = i;
            int high = i;
            int last = i;
            for (int j = i; j < to && (long) Math.floor(x[j] * columnsPerUnit) == column; j++) {
                low = y[j] < y[low] ? j : low;
                high = y[j] > y[high] ? j : high;
                last = j;
            }
            kept.set(i);
            kept.set(low);
            kept.set(high);
            kept.set(last);
            i = last + 1;
        }
        return kept.stream().toArray();
    }

    private BitSet simplify(double[] x, double[] y, int[] points) {
        int n = points.length;
        int low = 0;
        int high = 0;
        for (int k = 1; k < n; k++) {
            low = y[points[k]] < y[points[low]] ? k : low;
            high = y[points[k]] > y[points[high]] ? k : high;
        }
        int[] anchors = {0, low, high, n - 1};
        Arrays.sort(anchors);
        BitSet kept = new BitSet();
        for (int a = 0; a + 1 < anchors.length; a++) {
            split(x, y, points, anchors[a], anchors[a + 1], kept);
        }
        for (int anchor : anchors) {
            kept.set(points[anchor]);
        }
        return kept;
    }

    private void split(double[] x, double[] y, int[] points, int a, int b, BitSet kept) {
        if (b - a < 2) {
            return;
        }
        double ax = x[points[a]] * columnsPerUnit;
        double ay = y[points[a]] * pixelsPerUnit;
        double dx = x[points[b]] * columnsPerUnit - ax;
        double dy = y[points[b]] * pixelsPerUnit - ay;
        double length = Math.hypot(dx, dy);
        int farthest = a;
        double distance = 0;
        for (int k = a + 1; k < b; k++) {
            double px = x[points[k]] * columnsPerUnit - ax;
            double py = y[points[k]] * pixelsPerUnit - ay;
            double away = length > 0 ? Math.abs(px * dy - py * dx) / length : Math.hypot(px, py);
            if (away > distance) {
                distance = away;
                farthest = k;
            }
        }
        if (distance > tolerance) {
            kept.set(points[farthest]);
            split(x, y, points, a, farthest, kept);
            split(x, y, points, farthest, b, kept);
        }
    }
}

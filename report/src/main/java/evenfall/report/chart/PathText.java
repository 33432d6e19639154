package evenfall.report.chart;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Writes straight-edged paths as SVG does, in tenths of a pixel, each point against the one before: half as long. */
final class PathText {

    private PathText() {}

    /** Appends a path. */
    static void append(StringBuilder d, Path2D path) {
        double[] at = new double[6];
        long x = 0;
        long y = 0;
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            if (kind == PathIterator.SEG_CLOSE) {
                d.append('Z');
                continue;
            }
            boolean move = kind == PathIterator.SEG_MOVETO;
            long toX = Math.round(at[0] * 10);
            long toY = Math.round(at[1] * 10);
            d.append(move ? 'M' : 'l');
            tenths(d, move ? toX : toX - x);
            d.append(' ');
            tenths(d, move ? toY : toY - y);
            x = toX;
            y = toY;
        }
    }

    /** A path alone. */
    static String of(Path2D path) {
        StringBuilder d = new StringBuilder();
        append(d, path);
        return d.toString();
    }

    private static void tenths(StringBuilder d, long tenths) {
        long size = Math.abs(tenths);
        d.append(tenths < 0 ? "-" : "").append(size / 10);
        if (size % 10 != 0) {
            d.append('.').append(size % 10);
        }
    }
}

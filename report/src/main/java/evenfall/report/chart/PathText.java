package evenfall.report.chart;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Writes paths as SVG does, in tenths of a pixel, each point against the one before: half as long. */
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
            d.append(
                    switch (kind) {
                        case PathIterator.SEG_MOVETO -> 'M';
                        case PathIterator.SEG_LINETO -> 'l';
                        case PathIterator.SEG_QUADTO -> 'q';
                        default -> 'c';
                    });
            int points = kind == PathIterator.SEG_CUBICTO ? 3 : kind == PathIterator.SEG_QUADTO ? 2 : 1;
            boolean move = kind == PathIterator.SEG_MOVETO;
            long fromX = move ? 0 : x;
            long fromY = move ? 0 : y;
            for (int p = 0; p < points; p++) {
                x = Math.round(at[2 * p] * 10);
                y = Math.round(at[2 * p + 1] * 10);
                if (p > 0) {
                    d.append(' ');
                }
                tenths(d, x - fromX);
                d.append(' ');
                tenths(d, y - fromY);
            }
        }
    }

    /** A path alone. */
    static String of(Path2D path) {
        StringBuilder d = new StringBuilder();
        append(d, path);
        return d.toString();
    }

    /** Appends a number of tenths. */
    static void tenths(StringBuilder d, long tenths) {
        long size = Math.abs(tenths);
        d.append(tenths < 0 ? "-" : "").append(size / 10);
        if (size % 10 != 0) {
            d.append('.').append(size % 10);
        }
    }
}

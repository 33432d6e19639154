package evenfall.ingest.recorder;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A table of memory over time as a picture: minute, heap, outside the heap. */
final class MemoryPicture {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 240;
    private static final double LEFT = 56;
    private static final double BELOW = 36;
    private static final double MINUTES = 120;
    private static final double MEGABYTES = 200;

    private MemoryPicture() {}

    /** The picture, SVG. */
    static String of(String table) {
        List<double[]> rows = table.lines()
                .skip(1)
                .map(line -> List.of(line.split(",", -1)).stream()
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %.0f %.0f' font-family='sans-serif' font-size='12'>%n"
                        + "<rect width='100%%' height='100%%' fill='white'/>%n",
                LEFT + WIDTH + 20,
                HEIGHT + BELOW + 20));
        for (int mb = 0; mb <= MEGABYTES; mb += 50) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d='M%.1f %.1fH%.1f' stroke='#ddd'/><text x='%.1f' y='%.1f' text-anchor='end'>%d MB</text>%n",
                    x(0),
                    y(mb),
                    x(MINUTES),
                    x(0) - 6,
                    y(mb) + 4,
                    mb));
        }
        for (int minute = 0; minute <= MINUTES; minute += 30) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x='%.1f' y='%.1f' text-anchor='middle'>%d min</text>%n",
                    x(minute),
                    y(0) + 18,
                    minute));
        }
        svg.append(line(rows, 1, "#0072b2")).append(line(rows, 2, "#d55e00"));
        svg.append(label(30, 18, "#0072b2", "heap in use after a collection"));
        svg.append(label(30, 120, "#d55e00", "samples, outside the heap"));
        return svg.append("</svg>\n").toString();
    }

    private static String line(List<double[]> rows, int column, String colour) {
        return "<polyline fill='none' stroke-width='2' stroke='" + colour + "' points='"
                + rows.stream()
                        .map(row -> String.format(Locale.ROOT, "%.1f,%.1f", x(row[0]), y(row[column])))
                        .collect(Collectors.joining(" "))
                + "'/>\n";
    }

    private static String label(double minute, double megabytes, String colour, String text) {
        return String.format(
                Locale.ROOT, "<text x='%.1f' y='%.1f' fill='%s'>%s</text>%n", x(minute), y(megabytes), colour, text);
    }

    private static double x(double minute) {
        return LEFT + WIDTH * minute / MINUTES;
    }

    private static double y(double megabytes) {
        return 10 + HEIGHT * (1 - megabytes / MEGABYTES);
    }
}

package evenfall.ingest.table;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Lays a layout against the first lines of a file. */
final class LayoutPlanner {

    private static final Words WORDS = Words.beside(LayoutPlanner.class);

    private static final char[] SEPARATORS = {',', ';', '\t', ' '};

    private final Preview preview;
    private final Layout layout;

    LayoutPlanner(Preview preview, Layout layout) {
        this.preview = preview;
        this.layout = layout;
    }

    /**
     * Makes the plan for the sensor at a place.
     *
     * @throws UnusableInputException if layout and file do not fit
     */
    TablePlan plan(Place place) {
        if (preview.nothingAfter(layout.headerLines())) {
            throw new UnusableInputException(
                    WORDS.say("layout.rows.none", preview.name(), layout.headerLines(), layout.source()));
        }
        char separator = separator();
        HeaderColumns header = header(separator);
        List<Integer> acceleration = columns(layout.accelerometer().columns(), header);
        List<Integer> turnRate = columns(layout.gyroscope().columns(), header);
        Layout.TimeColumn timeColumn = layout.time();
        TimeForm time = time(timeColumn, header);
        int sensorColumn = layout.sensorColumn() == null ? -1 : column(layout.sensorColumn(), header);
        refuseShared(acceleration, turnRate, time.column(), sensorColumn);
        List<List<String>> rows = preview.rows(layout.headerLines(), separator);
        int cells = RowShape.cells(rows);
        List<Integer> numeric = new ArrayList<>(acceleration);
        numeric.addAll(turnRate);
        if (time.unit() != Unit.ISO_8601) {
            numeric.add(time.column());
        }
        byte decimal = (byte) (RowShape.decimalComma(rows, numeric) ? ',' : '.');
        String sensor = layout.sensors().getOrDefault(place, "");
        TablePlan plan = new TablePlan(
                (byte) separator,
                decimal,
                layout.headerLines(),
                cells,
                time,
                group(layout.accelerometer(), acceleration),
                group(layout.gyroscope(), turnRate),
                layout.axes(),
                sensorColumn,
                sensor);
        if (plan.lastColumn() >= cells) {
            throw new UnusableInputException(WORDS.say(
                    "layout.cells", preview.name(), cells, layout.source(), String.valueOf(plan.lastColumn())));
        }
        return plan;
    }

    private TimeForm time(Layout.@Nullable TimeColumn time, @Nullable HeaderColumns header) {
        if (time == null) {
            return TimeForm.evenly(layout.rateHz().orElseThrow());
        }
        double seconds = time.unit() == Unit.SAMPLES
                ? 1 / layout.rateHz().orElseThrow()
                : time.unit().toSi();
        return new TimeForm(column(time.column(), header), time.unit(), seconds, time.wrapsAt());
    }

    private static ColumnGroup group(Layout.Sensor sensor, List<Integer> columns) {
        double unit = sensor.unit().toSi();
        OptionalDouble range = sensor.range().isPresent()
                ? OptionalDouble.of(sensor.range().getAsDouble() * unit)
                : OptionalDouble.empty();
        return new ColumnGroup(columns, sensor.scale() * unit, range);
    }

    private char separator() {
        Character given = layout.separator();
        if (given != null) {
            return given;
        }
        char best = ',';
        int most = 0;
        for (char separator : SEPARATORS) {
            int cells = RowShape.cells(preview.rows(layout.headerLines(), separator));
            // A decimal comma splits more than the true separator does, so the later one wins where both can be.
            boolean wins = separator == ' ' ? most < 6 : cells >= 6 && (most < 6 || separator != ',');
            if (wins || (cells > most && most < 6)) {
                best = separator;
                most = cells;
            }
        }
        return best;
    }

    private @Nullable HeaderColumns header(char separator) {
        HeaderColumns best = null;
        for (int i = Math.min(layout.headerLines(), preview.lines().size()) - 1; i >= 0; i--) {
            String line = preview.lines().get(i).strip().replaceFirst("^(#|%|//)+\\s*", "");
            HeaderColumns columns = new HeaderColumns(preview.name(), Preview.split(line, separator));
            if (best == null || found(columns) > found(best)) {
                best = columns;
            }
        }
        return best;
    }

    private long found(HeaderColumns columns) {
        List<Layout.Column> wanted = new ArrayList<>(layout.accelerometer().columns());
        wanted.addAll(layout.gyroscope().columns());
        return wanted.stream()
                .filter(column ->
                        column.name() != null && columns.find(column.name()).isPresent())
                .count();
    }

    private List<Integer> columns(List<Layout.Column> columns, @Nullable HeaderColumns header) {
        return columns.stream().map(column -> column(column, header)).toList();
    }

    private int column(Layout.Column column, @Nullable HeaderColumns header) {
        String name = column.name();
        if (name == null) {
            return column.number();
        }
        if (header == null) {
            throw new UnusableInputException(WORDS.say("layout.name.lines", layout.source(), name));
        }
        return header.find(name)
                .orElseThrow(() -> new UnusableInputException(
                        WORDS.say("layout.name.none", preview.name(), name, layout.source(), header.shown())));
    }

    private void refuseShared(List<Integer> acceleration, List<Integer> turnRate, int time, int sensor) {
        Map<Integer, String> taken = new java.util.HashMap<>();
        acceleration.forEach(column -> take(taken, column, "accelerometer"));
        turnRate.forEach(column -> take(taken, column, "gyroscope"));
        if (time >= 0) {
            take(taken, time, "time");
        }
        if (sensor >= 0) {
            take(taken, sensor, "sensorColumn");
        }
    }

    private void take(Map<Integer, String> taken, int column, String what) {
        String before = taken.put(column, what);
        if (before != null) {
            throw new UnusableInputException(
                    WORDS.say("layout.column.twice", layout.source(), String.valueOf(column), before, what));
        }
    }
}

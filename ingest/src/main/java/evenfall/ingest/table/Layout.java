package evenfall.ingest.table;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.BodyAxes;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a layout file says about table files of one kind.
 *
 * @param source the layout file, for sentences
 * @param separator the character between cells, or null to find it out
 * @param headerLines lines before the first row
 * @param rateHz samples a second, if stated
 * @param time the time column, or null for evenly spaced samples
 * @param accelerometer the accelerometer's columns
 * @param gyroscope the gyroscope's columns
 * @param axes the mounting, or null if not known
 * @param sensorColumn the column that tells sensors apart, or null if the file holds one
 * @param sensors how each place is called in that column
 */
record Layout(
        String source,
        @Nullable Character separator,
        int headerLines,
        OptionalDouble rateHz,
        @Nullable TimeColumn time,
        Sensor accelerometer,
        Sensor gyroscope,
        @Nullable BodyAxes axes,
        @Nullable Column sensorColumn,
        Map<Place, String> sensors) {

    /** A column by its number from 0, or by its name in the header when {@code name} is not null. */
    record Column(int number, @Nullable String name) {}

    /** The time column; {@code wrapsAt} is 0 when the number does not wrap. */
    record TimeColumn(Column column, Unit unit, double wrapsAt) {}

    /** Three columns, the unit, what a raw step is in that unit, and where the sensor clips in that unit. */
    record Sensor(List<Column> columns, Unit unit, double scale, OptionalDouble range) {}
}

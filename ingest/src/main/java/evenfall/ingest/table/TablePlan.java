package evenfall.ingest.table;

import evenfall.ingest.recording.BodyAxes;
import org.jspecify.annotations.Nullable;

/**
 * How the rows of one file are read.
 *
 * @param separator the byte between cells
 * @param decimal the byte before decimals
 * @param headerLines physical lines before the first row
 * @param cells how many cells a row has, trailing empty ones left off; 0 if not known
 * @param time how time is told
 * @param acceleration the accelerometer's columns
 * @param turnRate the gyroscope's columns
 * @param axes the mounting, if stated
 * @param sensorColumn the column that names the sensor, or -1
 * @param sensor the name of the wanted sensor there; empty without such a column
 */
record TablePlan(
        byte separator,
        byte decimal,
        int headerLines,
        int cells,
        TimeForm time,
        ColumnGroup acceleration,
        ColumnGroup turnRate,
        @Nullable BodyAxes axes,
        int sensorColumn,
        String sensor) {

    /** The last column that is needed. */
    int lastColumn() {
        int last = Math.max(time.column(), sensorColumn);
        for (int column : acceleration.columns()) {
            last = Math.max(last, column);
        }
        for (int column : turnRate.columns()) {
            last = Math.max(last, column);
        }
        return last;
    }
}

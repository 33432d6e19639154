package evenfall.ingest.table;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The three columns of one accelerometer or gyroscope.
 *
 * @param columns where x, y, z stand, counted from 0
 * @param toSi what one step of the number is, m/s² or rad/s
 * @param range where the sensor clips, m/s² or rad/s, if it is stated
 */
record ColumnGroup(List<Integer> columns, double toSi, OptionalDouble range) {}

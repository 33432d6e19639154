package evenfall.ingest.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names as people and recorders write them; what they mean is common practice, no source. */
class ColumnNameTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ax_g | ACCELERATION | 0 | STANDARD_GRAVITY",
                "a_x [g] | ACCELERATION | 0 | STANDARD_GRAVITY",
                "AccelX (g) | ACCELERATION | 0 | STANDARD_GRAVITY",
                "accel_y_mps2 | ACCELERATION | 1 | METRE_PER_SECOND_SQUARED",
                "Acc_Z(m/s^2) | ACCELERATION | 2 | METRE_PER_SECOND_SQUARED",
                "az [m/s/s] | ACCELERATION | 2 | METRE_PER_SECOND_SQUARED",
                "ax (m s-2) | ACCELERATION | 0 | METRE_PER_SECOND_SQUARED",
                "ax_m/s**2 | ACCELERATION | 0 | METRE_PER_SECOND_SQUARED",
                "ax in g | ACCELERATION | 0 | STANDARD_GRAVITY",
                "X-Axis Acceleration [mg] | ACCELERATION | 0 | MILLI_GRAVITY",
                "ACC X [mG] | ACCELERATION | 0 | MILLI_GRAVITY",
                "gyro_z[deg/s] | TURN_RATE | 2 | DEGREE_PER_SECOND",
                "g_x_dps | TURN_RATE | 0 | DEGREE_PER_SECOND",
                "GyroX(°/s) | TURN_RATE | 0 | DEGREE_PER_SECOND",
                "wx_rad_s | TURN_RATE | 0 | RADIAN_PER_SECOND",
                "gx (rad s-1) | TURN_RATE | 0 | RADIAN_PER_SECOND",
                "angular velocity y [mrad/s] | TURN_RATE | 1 | MILLI_RADIAN_PER_SECOND",
                "gyr.x.mdps | TURN_RATE | 0 | MILLI_DEGREE_PER_SECOND",
                "rotationRate.x(rad/s) | TURN_RATE | 0 | RADIAN_PER_SECOND",
                "t_s | TIME | -1 | SECOND",
                "t/ms | TIME | -1 | MILLISECOND",
                "Timestamp (µs) | TIME | -1 | MICROSECOND",
                "timestamp_us | TIME | -1 | MICROSECOND",
                "seconds_elapsed | TIME | -1 | SECOND",
                "unix_time_ms | TIME | -1 | MILLISECOND",
                "sample | TIME | -1 | SAMPLES",
                "accelerometer_x | ACCELERATION | 0 |",
                "Timestamp | TIME | -1 |",
                "linear acceleration x (m/s^2) | OTHER | -1 |",
                "mag_x_uT | OTHER | -1 |",
                "temperature | OTHER | -1 |",
                "quat_x | OTHER | -1 |"
            })
    void saysQuantityAxisAndUnit(String text, Quantity quantity, int axis, @Nullable Unit unit) {
        ColumnName name = ColumnName.parse(text);
        assertThat(name.quantity()).isEqualTo(quantity);
        assertThat(name.axis()).isEqualTo(axis);
        assertThat(name.unit()).isEqualTo(unit);
    }
}

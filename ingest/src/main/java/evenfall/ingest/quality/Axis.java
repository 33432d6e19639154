package evenfall.ingest.quality;

import evenfall.ingest.recording.SensorStream;
import java.util.List;

/** The six columns of a stream. */
enum Axis {
    AX(0, "accelerometer", "x"),
    AY(1, "accelerometer", "y"),
    AZ(2, "accelerometer", "z"),
    GX(3, "gyroscope", "x"),
    GY(4, "gyroscope", "y"),
    GZ(5, "gyroscope", "z");

    static final List<Axis> ACCELEROMETER = List.of(AX, AY, AZ);
    static final List<Axis> GYROSCOPE = List.of(GX, GY, GZ);

    private final int column;
    private final String instrument;
    private final String letter;

    Axis(int column, String instrument, String letter) {
        this.column = column;
        this.instrument = instrument;
        this.letter = letter;
    }

    /** The value of sample {@code i}, m/s² or rad/s. */
    double value(SensorStream stream, int i) {
        return switch (this) {
            case AX -> stream.ax(i);
            case AY -> stream.ay(i);
            case AZ -> stream.az(i);
            case GX -> stream.gx(i);
            case GY -> stream.gy(i);
            case GZ -> stream.gz(i);
        };
    }

    /** 0 to 2 for the accelerometer's axes, 3 to 5 for the gyroscope's. */
    int column() {
        return column;
    }

    /** {@code accelerometer} or {@code gyroscope}. */
    String instrument() {
        return instrument;
    }

    /** {@code x}, {@code y} or {@code z}. */
    String letter() {
        return letter;
    }
}

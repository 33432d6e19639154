package evenfall.fusion.event;

import evenfall.fusion.orientation.OrientationTrack;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A body that moves up and down only, put together from pieces of closed form: each gives the specific force in units
 * of the standing weight over its own time. Computed apart from the product, as an outside witness.
 */
final class VerticalScript {

    static final double G = 9.80665;

    private record Piece(double begins, double lasts, DoubleUnaryOperator force) {}

    private final List<Piece> pieces = new ArrayList<>();
    private double end;

    /** Standing still for {@code lasts} s. */
    VerticalScript stand(double lasts) {
        return add(lasts, t -> 1);
    }

    /** No weight at all for {@code lasts} s. */
    VerticalScript fly(double lasts) {
        return add(lasts, t -> 0);
    }

    /** A half-sine of force added to the weight which changes the vertical speed by {@code change} m/s. */
    VerticalScript push(double lasts, double change) {
        double amplitude = change / G * Math.PI / (2 * lasts);
        return add(lasts, t -> 1 + amplitude * Math.sin(Math.PI * t / lasts));
    }

    /** Sine of {@code hertz} about the weight with an amplitude in weights, {@code lasts} s long. */
    VerticalScript sway(double lasts, double hertz, double amplitude) {
        return add(lasts, t -> 1 + amplitude * Math.sin(2 * Math.PI * hertz * t));
    }

    /** Seconds so far. */
    double end() {
        return end;
    }

    private VerticalScript add(double lasts, DoubleUnaryOperator force) {
        pieces.add(new Piece(end, lasts, force));
        end += lasts;
        return this;
    }

    private double force(double t) {
        for (Piece piece : pieces) {
            if (t < piece.begins() + piece.lasts()) {
                return piece.force().applyAsDouble(t - piece.begins());
            }
        }
        return 1;
    }

    /** What a sensor mounted at {@code sensorToWorld} records at {@code rateHz}. */
    SensorStream stream(double rateHz, Quaternion sensorToWorld) {
        double x = 2 * (sensorToWorld.x() * sensorToWorld.z() - sensorToWorld.w() * sensorToWorld.y());
        double y = 2 * (sensorToWorld.y() * sensorToWorld.z() + sensorToWorld.w() * sensorToWorld.x());
        double z = 1 - 2 * (sensorToWorld.x() * sensorToWorld.x() + sensorToWorld.y() * sensorToWorld.y());
        SensorStream.Builder builder = new SensorStream.Builder();
        int n = (int) Math.floor(end * rateHz);
        for (int i = 0; i < n; i++) {
            double force = G * force(i / rateHz);
            builder.add(i / rateHz, force * x, force * y, force * z, 0, 0, 0);
        }
        return builder.build();
    }

    /** An orientation that stays. */
    static OrientationTrack still(int size, Quaternion sensorToWorld) {
        float[] wxyz = new float[4 * size];
        for (int i = 0; i < size; i++) {
            wxyz[4 * i] = (float) sensorToWorld.w();
            wxyz[4 * i + 1] = (float) sensorToWorld.x();
            wxyz[4 * i + 2] = (float) sensorToWorld.y();
            wxyz[4 * i + 3] = (float) sensorToWorld.z();
        }
        return new OrientationTrack(wxyz);
    }

    /** The events found in it at {@code rateHz}. */
    List<Event> events(double rateHz, Quaternion sensorToWorld) {
        SensorStream stream = stream(rateHz, sensorToWorld);
        return new EventFinder().find(stream, still(stream.size(), sensorToWorld));
    }

    /** The events found in it at {@code rateHz} while the sensor pitches by {@code pitch} (rad, of the time in s). */
    List<Event> events(double rateHz, DoubleUnaryOperator pitch) {
        SensorStream.Builder builder = new SensorStream.Builder();
        int n = (int) Math.floor(end * rateHz);
        float[] wxyz = new float[4 * n];
        for (int i = 0; i < n; i++) {
            double t = i / rateHz;
            double angle = pitch.applyAsDouble(t);
            double rate = (pitch.applyAsDouble(t + 0.001) - pitch.applyAsDouble(t - 0.001)) / 0.002;
            double force = G * force(t);
            builder.add(t, -force * Math.sin(angle), 0, force * Math.cos(angle), 0, rate, 0);
            wxyz[4 * i] = (float) Math.cos(angle / 2);
            wxyz[4 * i + 2] = (float) Math.sin(angle / 2);
        }
        return new EventFinder().find(builder.build(), new OrientationTrack(wxyz));
    }
}

package evenfall.report.rehearsal;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Gravity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.wire.FrameWriter;
import evenfall.ingest.wire.Hello;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A sensor that speaks the binary form: counts of 16 bits over the narrowest usual full scale that holds the recording.
 * Its numbering goes on through the recording's own gaps, as that of a sensor does whose samples were lost.
 */
final class FrameVoice implements Voice {

    private static final int[] USUAL_G = {2, 4, 8, 16, 32, 64, 128, 256, 512, 1000};
    private static final int[] USUAL_DEGREES = {125, 250, 500, 1000, 2000, 4000, 8000, 20_000};
    private static final int COUNTS = 1 << 15;

    /** Full scales are named in round numbers; what stands a little above one is not of the next. */
    private static final double ROUNDING = 1.001;

    private final SensorStream stream;
    private final Hello hello;
    private final short[] counts = new short[6];
    private long sequence;

    FrameVoice(int number, @Nullable Place place, SensorStream stream) {
        this.stream = stream;
        double g = range(stream.accelerationRange(), stream::ax, stream::ay, stream::az) / Gravity.STANDARD;
        double degrees = Math.toDegrees(range(stream.turnRateRange(), stream::gx, stream::gy, stream::gz));
        int fullG = usual(USUAL_G, g);
        int fullDegrees = usual(USUAL_DEGREES, degrees);
        this.hello = new Hello(
                number,
                place,
                (float) fullG / COUNTS,
                (float) fullDegrees / COUNTS,
                stream.accelerationRange().isPresent() ? (float) g : fullG,
                stream.turnRateRange().isPresent() ? (float) degrees : fullDegrees,
                stream.rateHz() > 0 ? (float) stream.rateHz() : 1,
                "rehearsal");
    }

    Hello hello() {
        return hello;
    }

    @Override
    public byte[] sample(int i) {
        double step = i == 0 ? 0 : (stream.time(i) - stream.time(i - 1)) * stream.rateHz();
        sequence += step > SensorStream.GAP_INTERVALS ? Math.round(step) : Math.min(i, 1);
        counts[0] = count(stream.ax(i), hello.accelerationPerCount());
        counts[1] = count(stream.ay(i), hello.accelerationPerCount());
        counts[2] = count(stream.az(i), hello.accelerationPerCount());
        counts[3] = count(stream.gx(i), hello.turnRatePerCount());
        counts[4] = count(stream.gy(i), hello.turnRatePerCount());
        counts[5] = count(stream.gz(i), hello.turnRatePerCount());
        return FrameWriter.sample(hello.sensor(), sequence, clockUs(stream.time(i)), counts);
    }

    @Override
    public byte[] hello(double timeS) {
        return FrameWriter.hello(hello, clockUs(timeS));
    }

    private long clockUs(double timeS) {
        return Math.round((Math.max(0, stream.clockStartS()) + timeS) * 1e6);
    }

    private static short count(double value, double scale) {
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value / scale)));
    }

    private double range(OptionalDouble stated, IntToDoubleFunction x, IntToDoubleFunction y, IntToDoubleFunction z) {
        if (stated.isPresent()) {
            return stated.getAsDouble();
        }
        double most = 0;
        for (int i = 0; i < stream.size(); i++) {
            double size = Math.max(
                    Math.abs(x.applyAsDouble(i)), Math.max(Math.abs(y.applyAsDouble(i)), Math.abs(z.applyAsDouble(i))));
            most = Math.max(most, size);
        }
        return most;
    }

    private static int usual(int[] ranges, double needed) {
        for (int range : ranges) {
            if (needed <= range * ROUNDING) {
                return range;
            }
        }
        return ranges[ranges.length - 1];
    }
}

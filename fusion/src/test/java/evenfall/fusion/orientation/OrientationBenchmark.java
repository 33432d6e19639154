package evenfall.fusion.orientation;

import evenfall.ingest.recording.SensorStream;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time a sample of each filter over five minutes at 200 Hz, with the plain turning of a quaternion by its turn rate as
 * the yardstick. Run with {@code -prof gc} for the bytes: those of a whole run are the track's eight a sample.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OrientationBenchmark {

    private static final int SAMPLES = 60_000;

    private SensorStream stream;

    /** A body that swings about all axes and is shaken, with stamps that jitter. */
    @Setup
    public void motion() {
        SplittableRandom random = new SplittableRandom(1);
        SensorStream.Builder builder = new SensorStream.Builder();
        for (int i = 0; i < SAMPLES; i++) {
            double t = i / 200.0;
            boolean moves = i % 4000 > 800;
            double size = moves ? 1 : 0;
            builder.add(
                    t + random.nextDouble(-2e-4, 2e-4),
                    size * 3 * Math.sin(7 * t),
                    size * 2 * Math.cos(3 * t),
                    9.81 + size * 4 * Math.sin(11 * t),
                    0.01 + size * Math.sin(2 * t),
                    size * Math.cos(3 * t),
                    size * Math.sin(5 * t));
        }
        stream = builder.build();
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double yardstickStrapdown() {
        Attitude q = new Attitude();
        for (int i = 0; i < SAMPLES; i++) {
            q.turnByBodyRate(stream.gx(i), stream.gy(i), stream.gz(i), 0.005);
        }
        return q.w;
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double stepMadgwick() {
        return steps(new MadgwickFilter(MadgwickFilter.DEFAULT_BETA));
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double stepComplementary() {
        return steps(new ComplementaryFilter(ComplementaryFilter.DEFAULT_TIME_CONSTANT));
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double stepLive() {
        return steps(new MotionFilter(MotionParams.STANDARD, 200, LookLog.NONE));
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double stepPublished() {
        return steps(new InertialFilter(InertialParams.published(), 200));
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public OrientationTrack trackLive() {
        return OrientationEstimator.estimate(stream, FilterKind.LIVE);
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public OrientationTrack trackTwoPass() {
        return OrientationEstimator.estimate(stream, FilterKind.TWO_PASS);
    }

    private double steps(OrientationFilter filter) {
        for (int i = 0; i < SAMPLES; i++) {
            filter.step(0.005, stream.ax(i), stream.ay(i), stream.az(i), stream.gx(i), stream.gy(i), stream.gz(i));
        }
        return filter.w();
    }
}

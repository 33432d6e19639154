package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.LiveAnalyser;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a minute of looking on costs, two sensors at 400 Hz in blocks of 40 ms, early in a session and in its second hour.
 * Each run plays the next minute, some two or three landings; making the samples is part of it and takes a tenth or so.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class LiveBenchmark {

    private static final double BLOCK_S = 0.04;
    /** What came before is played in larger blocks, to save time. */
    private static final double LARGE_BLOCK_S = 2;

    /** Minutes that went before. */
    @Param({"1", "110"})
    public int minutes;

    private final LongSession session = new LongSession(400);
    private final LiveAnalyser analyser = new LiveAnalyser();
    private double now;

    @Setup(Level.Trial)
    public void before() {
        for (; now < 60.0 * minutes; now += LARGE_BLOCK_S) {
            analyser.advance(session.until(now));
        }
    }

    /** The next minute. */
    @Benchmark
    public int minute() {
        int told = 0;
        for (double end = now + 60; now < end; now += BLOCK_S) {
            told += analyser.advance(session.until(now)).landings().size();
        }
        return told;
    }
}

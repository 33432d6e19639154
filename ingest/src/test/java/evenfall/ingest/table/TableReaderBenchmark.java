package evenfall.ingest.table;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.SensorRecording;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How fast a table of seven columns is read, start to finish, on one core: look for {@code megabytes}, in MB of file a
 * second. The file has about 100 MB.
 */
@Fork(2)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 4)
@Measurement(iterations = 4, time = 4)
@SuppressWarnings("NullAway.Init") // the benchmark runner calls the set-up before anything else
public class TableReaderBenchmark {

    private static final int ROWS = 1_800_000;

    /** The file. */
    @State(Scope.Benchmark)
    @SuppressWarnings("NullAway.Init") // the benchmark runner calls the set-up before anything else
    public static class Table {
        Path file;
        double megabytes;

        @Setup(Level.Trial)
        public void write() throws IOException {
            file = Files.createTempFile("table-reader-benchmark", ".csv");
            SplittableRandom random = new SplittableRandom(7);
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
                out.write("t_ms,ax_g,ay_g,az_g,gx_dps,gy_dps,gz_dps\n".getBytes(StandardCharsets.US_ASCII));
                for (int i = 0; i < ROWS; i++) {
                    String row = String.format(
                            Locale.ROOT,
                            "%.3f,%.5f,%.5f,%.5f,%.4f,%.4f,%.4f%n",
                            5000 + 5 * i + random.nextDouble(),
                            random.nextDouble(-1, 1),
                            random.nextDouble(-1, 1),
                            random.nextDouble(-12, 12),
                            random.nextDouble(-300, 300),
                            random.nextDouble(-300, 300),
                            random.nextDouble(-300, 300));
                    out.write(row.getBytes(StandardCharsets.US_ASCII));
                }
            }
            megabytes = Files.size(file) / 1e6;
        }

        @TearDown(Level.Trial)
        public void delete() throws IOException {
            Files.delete(file);
        }
    }

    /** Megabytes read; shown a second. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Read {
        public double megabytes;

        @Setup(Level.Iteration)
        public void clear() {
            megabytes = 0;
        }
    }

    @Benchmark
    public SensorRecording plainFile(Table table, Read read) throws IOException {
        SensorRecording recording = RecordingFiles.readSensor(table.file, null, Progress.NONE);
        read.megabytes += table.megabytes;
        return recording;
    }
}

package evenfall.ingest.recorder;

import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.serial.Port;
import evenfall.ingest.wire.LineWriter;
import java.io.IOException;
import java.lang.management.BufferPoolMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Two hours of two sensors at 400 Hz on one port through the whole recorder (port, disk, decoder), as fast as it goes: is
 * anything lost, does memory grow, how much of one core does it take. Each read gives what 5 ms bring, so that reads and
 * writes are as many as they are at true speed; arrival times are those of true speed. Somebody looks on 25 times a second
 * of that time.
 *
 * <p>Writes a table to the folder given first ({@code soak.csv}: minute, heap in use after a collection, memory outside the
 * heap, MB) with its picture, and says the rest.
 */
@SuppressWarnings("SystemOut") // a benchmark speaks to the person who runs it
public final class SoakBenchmark {

    private static final double RATE_HZ = 400;
    private static final double DURATION_S = 7200;
    private static final int PER_READ = 2;
    private static final double LOOK_S = 0.04;
    private static final double MEASURE_S = 120;
    private static final long SEED = 61;

    private SoakBenchmark() {}

    /** Runs it; the folder is made if missing, and the recording in it is taken away at the end. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path raw = Files.createDirectory(folder.resolve("raw"));
        StringBuilder table = new StringBuilder("minute,heapMB,outsideMB\n");
        TrueSpeed clock = new TrueSpeed();
        SensorPort port = new SensorPort(clock);
        long begun = System.nanoTime();
        try (WireRecorder recorder = new WireRecorder(raw, List.of(port), clock)) {
            double lookS = 0;
            double measureS = 0;
            while (!port.ended()) {
                double now = clock.seconds();
                if (now >= lookS) {
                    lookS = now + LOOK_S;
                    recorder.soFar();
                }
                if (now >= measureS) {
                    measureS = now + MEASURE_S;
                    table.append(String.format(Locale.ROOT, "%.1f,%.2f,%.2f%n", now / 60, heap(), outside()));
                }
                Thread.sleep(1);
            }
            double wallS = (System.nanoTime() - begun) * 1e-9;
            double madeS = making();
            double tookS = cpu("port soak") + cpu("decode 1") - madeS;
            System.out.printf(
                    Locale.ROOT,
                    "%.0f s in %.0f s; the recorder took %.1f s of processor (making the lines, %.1f s, left out): %.2f %% of"
                            + " a core%n",
                    DURATION_S,
                    wallS,
                    tookS,
                    madeS,
                    100 * tookS / DURATION_S);
            System.out.println(recorder.counts() + " of " + port.sent + " sent");
        }
        Files.writeString(folder.resolve("soak.csv"), table);
        Files.writeString(folder.resolve("recording-memory.svg"), MemoryPicture.of(table.toString()));
        Recording kept = KeptRecording.read(raw, Progress.NONE);
        SensorRecording back = kept.upperBack();
        System.out.println("read back: " + kept.pelvis().stream().size() + " and "
                + (back == null ? 0 : back.stream().size()) + " samples, "
                + kept.pelvis().findings() + ", "
                + Files.size(raw.resolve("port-1.wire")) / 1_000_000 + " MB and "
                + Files.size(raw.resolve("port-1.arrivals.csv")) / 1_000_000.0 + " MB of arrivals");
        Files.delete(raw.resolve("port-1.wire"));
        Files.delete(raw.resolve("port-1.arrivals.csv"));
        Files.delete(raw);
    }

    /** What making the lines alone takes, s of processor. */
    private static double making() {
        SensorPort again = new SensorPort(new TrueSpeed());
        byte[] into = new byte[1 << 16];
        long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        while (!again.ended()) {
            again.read(into);
        }
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begun) * 1e-9;
    }

    private static double heap() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }

    private static double outside() {
        return ManagementFactory.getPlatformMXBeans(BufferPoolMXBean.class).stream()
                        .mapToLong(BufferPoolMXBean::getMemoryUsed)
                        .sum()
                / 1e6;
    }

    private static double cpu(String thread) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (ThreadInfo info : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (info != null && info.getThreadName().equals(thread)) {
                return threads.getThreadCpuTime(info.getThreadId()) * 1e-9;
            }
        }
        return Double.NaN;
    }

    /** A clock that goes with the samples. */
    private static final class TrueSpeed extends Clock {

        private static final Instant START = Instant.parse("2026-05-04T10:00:00Z");

        private final AtomicLong micros = new AtomicLong();

        double seconds() {
            return micros.get() * 1e-6;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return START.plusNanos(micros.get() * 1000);
        }
    }

    /** Gives samples as fast as they are read, from lines that were made before and repeat with new times. */
    private static final class SensorPort implements Port {

        /** A session: mostly quiet, and every few seconds a landing of its own hardness. */
        private static final int KINDS = 99_991;

        private static final int QUIET = 1700;

        private final TrueSpeed clock;
        private final List<double[]> kinds = new ArrayList<>();
        private final AtomicLong sent = new AtomicLong();
        private int at;

        SensorPort(TrueSpeed clock) {
            this.clock = clock;
            SplittableRandom random = new SplittableRandom(SEED);
            for (int i = 0; i < KINDS; i++) {
                double most = i % QUIET == 0 ? random.nextDouble(20, 100) : 5;
                kinds.add(random.doubles(6, -most, most).toArray());
            }
        }

        boolean ended() {
            return at >= DURATION_S * RATE_HZ;
        }

        @Override
        public String name() {
            return "soak";
        }

        @Override
        public int read(byte[] into) {
            if (ended()) {
                pause();
                return 0;
            }
            int length = 0;
            for (int k = 0; k < PER_READ; k++) {
                double[] v = kinds.get(at % KINDS);
                for (Place place : Place.values()) {
                    byte[] line = LineWriter.line(place, at / RATE_HZ, v[0], v[1], v[2], v[3], v[4], v[5]);
                    System.arraycopy(line, 0, into, length, line.length);
                    length += line.length;
                    sent.incrementAndGet();
                }
                at++;
            }
            clock.micros.set((long) (at / RATE_HZ * 1e6));
            return length;
        }

        private static void pause() {
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void write(byte[] bytes, int from, int to) throws IOException {
            throw new IOException("sensors are not written to");
        }

        @Override
        public boolean speed(int baud) {
            return false;
        }

        @Override
        public void close() {
            // Nothing is held.
        }
    }
}

package evenfall.ingest.recorder;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Port;
import evenfall.ingest.wire.EitherDecoder;
import evenfall.ingest.wire.SampleReceiver;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireDecoder;
import evenfall.ingest.wire.WireStreams;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Reads ports until it is closed or all of them are gone, keeps their bytes and collects their samples.
 *
 * <p>One thread a port only reads, appends and decodes; another has the disk written every {@value #FORCE_MS} ms. May be
 * asked and closed from any thread.
 */
public final class WireRecorder implements AutoCloseable {

    private static final long FORCE_MS = 400;
    private static final long GRACE_MS = 200;
    private static final int BUFFER = 1 << 16;

    private final SampleQueue queue = new SampleQueue();
    private final WireStreams streams = new WireStreams(queue);
    private final List<PortReader> readers = new ArrayList<>();
    private final List<Thread> threads = new ArrayList<>();
    private final CountDownLatch ended;
    private volatile boolean closing;

    /**
     * Starts reading.
     *
     * @param folder where the files {@code port-1.wire}, {@code port-2.wire} … are made; must exist and hold none yet
     * @param ports what to read; closed with the recorder
     * @param clock what arrival times are taken from, in the local zone
     * @throws IOException if the files cannot be made
     */
    public WireRecorder(Path folder, List<Port> ports, Clock clock) throws IOException {
        ended = new CountDownLatch(ports.size());
        for (int i = 0; i < ports.size(); i++) {
            readers.add(new PortReader(ports.get(i), new PortFile(folder, "port-" + (i + 1), clock)));
        }
        for (PortReader reader : readers) {
            threads.add(start("port " + reader.port.name(), reader));
        }
        start("disk", this::forceNowAndThen);
    }

    /** Waits until all ports are gone, but no longer than this; says whether they are. */
    public boolean awaitEnd(long milliseconds) throws InterruptedException {
        return ended.await(milliseconds, TimeUnit.MILLISECONDS);
    }

    /** What came so far, or empty while the pelvis has not spoken. A copy: nothing is added to it later. */
    public Optional<Recording> soFar() {
        synchronized (streams) {
            return streams.recording("the port");
        }
    }

    /**
     * Hands over the samples that came since the last time, in order of arrival; the cost goes with their number alone,
     * and nobody who reads a port waits meanwhile. For one looker-on: what was handed over is not kept here. When nobody
     * looks for more than {@value SampleQueue#MOST} samples, later ones are left out of this (see {@link #missed}), never
     * of the files.
     *
     * @return how many samples that were
     */
    public int drainTo(SampleReceiver receiver) {
        return queue.drainTo(receiver);
    }

    /** Samples that {@link #drainTo} will never give, since nobody looked for too long. */
    public long missed() {
        return queue.missed();
    }

    /** What became of all lines so far. */
    public WireCounts counts() {
        synchronized (streams) {
            WireCounts counts = WireCounts.NONE;
            for (PortReader reader : readers) {
                counts = counts.plus(reader.decoder.counts());
            }
            return counts;
        }
    }

    /** Names of the ports that are gone. */
    public List<String> gone() {
        return readers.stream()
                .filter(reader -> reader.gone)
                .map(reader -> reader.port.name())
                .toList();
    }

    /** Why writing failed, if it did. */
    public Optional<IOException> failure() {
        return readers.stream()
                .map(reader -> reader.failure)
                .filter(Objects::nonNull)
                .findFirst();
    }

    /** Wishes for the end and returns at once: a port that goes away from now on was not lost. */
    public void end() {
        closing = true;
    }

    /** Ends the recording: the files are marked as ended, written to disk and closed. */
    @Override
    public void close() {
        closing = true;
        for (Thread thread : threads) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private void forceNowAndThen() {
        try {
            while (!ended.await(FORCE_MS, TimeUnit.MILLISECONDS)) {
                for (PortReader reader : readers) {
                    reader.force();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Thread start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private final class PortReader implements Runnable {

        private final Port port;
        private final PortFile file;
        private final WireDecoder decoder = new EitherDecoder(streams);
        private volatile boolean gone;
        private volatile @Nullable IOException failure;

        PortReader(Port port, PortFile file) {
            this.port = port;
            this.file = file;
        }

        @Override
        public void run() {
            byte[] buffer = new byte[BUFFER];
            try (port;
                    file) {
                while (!closing) {
                    int count = port.read(buffer);
                    if (count > 0) {
                        file.append(buffer, count);
                        synchronized (streams) {
                            decoder.accept(buffer, 0, count);
                        }
                    }
                    gone = count == Port.GONE && lost();
                    if (count == Port.GONE) {
                        break;
                    }
                }
                file.remark(gone ? Remark.GONE : Remark.END);
                synchronized (streams) {
                    decoder.end();
                }
            } catch (IOException e) {
                failure = e;
            } finally {
                ended.countDown();
            }
        }

        /** When the program is told to end, ports may be closed a moment before the recorder hears of it. */
        private boolean lost() {
            try {
                Thread.sleep(GRACE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return !closing;
        }

        void force() {
            try {
                file.force();
            } catch (IOException e) {
                failure = e;
            }
        }
    }
}

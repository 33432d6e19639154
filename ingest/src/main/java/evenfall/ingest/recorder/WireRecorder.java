package evenfall.ingest.recorder;

import evenfall.ingest.place.Place;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Port;
import evenfall.ingest.wire.TapWatch;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireStreams;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Reads ports until it is closed, also those that go away and come back, keeps their bytes and collects their samples.
 *
 * <p>One thread a port only reads and appends, another one decodes, so that reading waits for nobody; a third has the disk
 * written every {@value #FORCE_MS} ms. May be asked and closed from any thread.
 */
public final class WireRecorder implements AutoCloseable {

    private static final long FORCE_MS = 400;
    private static final int FEW = 10;

    private final WireStreams streams = new WireStreams();
    private final Path folder;
    private final List<PortReader> readers = new ArrayList<>();
    private final List<PortListener> listeners = new ArrayList<>();
    private final List<Thread> threads = new ArrayList<>();
    private final CountDownLatch ended;

    /**
     * Starts reading.
     *
     * @param folder where the files {@code port-1.wire}, {@code port-2.wire} … are made; must exist and hold none yet
     * @param ports what to read, in order of the files; closed with the recorder
     * @param clock what arrival times are taken from, in the local zone
     * @throws IOException if the files cannot be made
     */
    public WireRecorder(Path folder, List<? extends Port> ports, Clock clock) throws IOException {
        this(folder, ports, clock, NewFile.ON_DISK);
    }

    WireRecorder(Path folder, List<? extends Port> ports, Clock clock, NewFile files) throws IOException {
        this.folder = folder;
        this.ended = new CountDownLatch(ports.size());
        List<PortFile> opened = new ArrayList<>();
        try {
            for (int i = 0; i < ports.size(); i++) {
                opened.add(new PortFile(folder, "port-" + (i + 1), clock, files));
            }
            syncFolder();
        } catch (IOException e) {
            for (PortFile file : opened) {
                file.close();
            }
            throw DiskRoom.explained(folder, e);
        }
        for (int i = 0; i < ports.size(); i++) {
            PortListener listener = new PortListener(streams);
            listeners.add(listener);
            threads.add(start("decode " + (i + 1), listener));
            PortReader reader = new PortReader(ports.get(i), opened.get(i), listener, ended);
            readers.add(reader);
            threads.add(start("port " + reader.name(), reader));
        }
        start("disk", this::forceNowAndThen);
    }

    /** Waits until nothing is read any more, but no longer than this; says whether that is so. */
    public boolean awaitEnd(long milliseconds) throws InterruptedException {
        return ended.await(milliseconds, TimeUnit.MILLISECONDS);
    }

    /**
     * What came so far, or empty while the pelvis has not spoken. Nothing is added to it later. It shares the samples and is
     * made in a time that does not grow with their number, so it may be asked for many times a second.
     */
    public Optional<Recording> soFar() {
        synchronized (streams) {
            return streams.soFar("the port");
        }
    }

    /**
     * The whole as {@link KeptRecording#read} reads it back from the files, without reading them; for a closed recorder. Empty
     * where the pelvis has not spoken, or where something went wrong so that the files know better.
     */
    public Optional<Recording> whole() throws IOException {
        List<Path> files = KeptRecording.files(folder);
        boolean sound = failure().isEmpty() && deafness().isEmpty() && files.size() == readers.size();
        // Samples that came long before their scale was told are held for longer when the files are read.
        if (!sound || counts().unreadable() > FEW) {
            return Optional.empty();
        }
        synchronized (streams) {
            streams.placeByElimination();
            Optional<Recording> recording = streams.recording(folder.toString());
            return recording.isEmpty()
                    ? recording
                    : Optional.of(KeptRecording.withFindings(
                            recording.get(),
                            streams,
                            files,
                            listeners.stream().map(PortListener::decoder).toList()));
        }
    }

    /** Why nothing is read from the bytes any more, if that is so; they are kept all the same. */
    public Optional<Throwable> deafness() {
        return listeners.stream()
                .flatMap(listener -> listener.deafness().stream())
                .findFirst();
    }

    /** What became of all lines so far. */
    public WireCounts counts() {
        WireCounts counts = WireCounts.NONE;
        for (Heard heard : heard()) {
            counts = counts.plus(heard.counts());
        }
        return counts;
    }

    /** What came from each port so far, in their order. */
    public List<Heard> heard() {
        return readers.stream().map(PortReader::heard).toList();
    }

    /** How many samples of {@code place} came so far. */
    public int samples(Place place) {
        synchronized (streams) {
            return streams.size(place);
        }
    }

    /** Numbers of the sensors that send samples and whose place is not known, in the order they were first heard. */
    public List<Integer> unplaced() {
        synchronized (streams) {
            return streams.unplaced();
        }
    }

    /**
     * Says where a sensor is worn: what it sent joins the recording from its beginning, and the session remembers it.
     *
     * @throws IOException if that could not be written; it holds for this recorder all the same
     */
    public void place(int sensor, Place place) throws IOException {
        synchronized (streams) {
            streams.place(sensor, place);
        }
        PlacesFile.add(folder, sensor, place);
    }

    /** Which of the sensors whose place is not known was tapped just now, if that can be told. */
    public TapWatch.Answer tapped() {
        synchronized (streams) {
            return streams.tapped();
        }
    }

    /** Why writing failed, if it did; a {@link DiskFullException} if the disk is full. */
    public Optional<IOException> failure() {
        return readers.stream()
                .flatMap(reader -> reader.failure().stream())
                .findFirst()
                .map(failure -> DiskRoom.explained(folder, failure));
    }

    /** Wishes for the end and returns at once: a port that goes away from now on was not lost. */
    public void end() {
        readers.forEach(PortReader::end);
    }

    /** Ends the recording: the files are marked as ended, written to disk and closed. */
    @Override
    public void close() {
        end();
        for (Thread thread : threads) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    /** Has the new names written to the disk; some systems cannot, and need not. */
    private void syncFolder() {
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (IOException e) {
            return;
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
}

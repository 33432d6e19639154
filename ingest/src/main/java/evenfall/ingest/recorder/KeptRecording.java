package evenfall.ingest.recorder;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.Arrivals.Mark;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.wire.SensorId;
import evenfall.ingest.wire.WireStreams;
import evenfall.ingest.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

/** Reads back what a {@link WireRecorder} kept in a folder, to its last whole line. */
public final class KeptRecording {

    private static final Words WORDS = Words.beside(KeptRecording.class);

    private static final int BUFFER = 1 << 16;

    /** So many samples may come before a sensor first says what it is: twenty minutes at 400 Hz. */
    private static final int HELD = 1 << 19;

    private KeptRecording() {}

    /** The files of bytes in {@code folder}, in order of their ports; empty if no recorder wrote there. */
    public static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(path -> path.getFileName().toString().endsWith(PortFile.ENDING))
                    .sorted()
                    .toList();
        }
    }

    /** Whether a recorder, of this program or another, is writing in {@code folder} now. */
    public static boolean beingWritten(Path folder) throws IOException {
        for (Path file : files(folder)) {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                    FileLock lock = channel.tryLock()) {
                if (lock == null) {
                    return true;
                }
            } catch (OverlappingFileLockException e) {
                return true;
            }
        }
        return false;
    }

    /** Whether some port's file in {@code folder} has no end: the program or the machine stopped while it was written. */
    public static boolean cutShort(Path folder) throws IOException {
        for (Path file : files(folder)) {
            if (!Arrivals.read(PortFile.arrivalsOf(file)).ended()) {
                return true;
            }
        }
        return false;
    }

    /**
     * The recording in {@code folder}.
     *
     * @throws UnusableInputException if there is no sample of the pelvis in it
     */
    public static Recording read(Path folder, Progress progress) throws IOException {
        WireStreams streams = new WireStreams();
        PlacesFile.read(folder).forEach(streams::place);
        List<PortDecoder> decoders = new ArrayList<>();
        List<Path> files = files(folder);
        for (Path file : files) {
            PortDecoder decoder = new PortDecoder(streams, HELD);
            decode(file, Arrivals.read(PortFile.arrivalsOf(file)), decoder, progress);
            decoders.add(decoder);
        }
        streams.placeByElimination();
        Recording recording = streams.recording(folder.toString())
                .orElseThrow(() -> new UnusableInputException(noPelvis(folder, streams)));
        return withFindings(recording, streams, files, decoders);
    }

    private static String noPelvis(Path folder, WireStreams streams) {
        List<String> unplaced = streams.unplaced().stream().map(SensorId::text).toList();
        return unplaced.isEmpty()
                ? WORDS.say("pelvis.none", folder)
                : WORDS.say(
                        "places.none",
                        String.join(" and ", unplaced),
                        folder.resolve(PlacesFile.NAME),
                        unplaced.get(0),
                        Place.PELVIS.code());
    }

    /** The recording with what the files and their decoders tell of how it came. */
    static Recording withFindings(
            Recording recording, WireStreams streams, List<Path> files, List<PortDecoder> decoders) throws IOException {
        SensorRecording pelvis = recording.pelvis();
        SensorRecording upperBack = recording.upperBack();
        List<Finding> ofPelvis = new ArrayList<>(pelvis.findings());
        List<Finding> ofUpperBack = new ArrayList<>(upperBack == null ? List.of() : upperBack.findings());
        double endS = pelvis.stream().durationS();
        for (int i = 0; i < files.size(); i++) {
            Path file = files.get(i);
            PortDecoder decoder = decoders.get(i);
            List<Double> losses = decoder.losses().stream()
                    .map(clockS -> clockS - pelvis.stream().clockStartS())
                    .toList();
            ofPelvis.addAll(WireFindings.refused(String.valueOf(file.getFileName()), decoder.counts()));
            ofPelvis.addAll(WireFindings.course(Arrivals.read(PortFile.arrivalsOf(file)), losses, endS));
            ofPelvis.addAll(WireFindings.newStarts(newStarts(decoder, streams, Place.PELVIS), Place.PELVIS, pelvis));
            ofUpperBack.addAll(
                    WireFindings.newStarts(newStarts(decoder, streams, Place.UPPER_BACK), Place.UPPER_BACK, upperBack));
        }
        return new Recording(with(pelvis, ofPelvis), upperBack == null ? null : with(upperBack, ofUpperBack));
    }

    private static List<SensorClocks.NewStart> newStarts(PortDecoder decoder, WireStreams streams, Place place) {
        return decoder.newStarts().stream()
                .filter(start -> streams.placeOf(start.sensor()) == place)
                .toList();
    }

    private static SensorRecording with(SensorRecording sensor, List<Finding> findings) {
        return new SensorRecording(sensor.source(), sensor.stream(), sensor.axes(), findings);
    }

    /** Decodes as it was done live: in pieces that begin where an arrival was noted. */
    private static void decode(Path file, Arrivals arrivals, PortDecoder decoder, Progress progress)
            throws IOException {
        long size = Math.max(1, Files.size(file));
        String stage = progress == Progress.NONE ? "" : WORDS.say("reading", file.getFileName());
        long done = 0;
        byte[] buffer = new byte[BUFFER];
        Iterator<Mark> marks = arrivals.marks().iterator();
        Mark next = marks.hasNext() ? marks.next() : null;
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                int from = 0;
                while (next != null && next.bytes() < done + count) {
                    int to = (int) (next.bytes() - done);
                    decoder.accept(buffer, from, to);
                    tell(decoder, next);
                    from = to;
                    next = marks.hasNext() ? marks.next() : null;
                }
                decoder.accept(buffer, from, count);
                done += count;
                progress.at(stage, Math.min(1, (double) done / size));
            }
        }
        while (next != null && next.bytes() == done) {
            tell(decoder, next);
            next = marks.hasNext() ? marks.next() : null;
        }
        decoder.end();
    }

    private static void tell(PortDecoder decoder, Mark mark) {
        if (mark.remark() == Remark.GONE) {
            decoder.gone(mark.atS());
        } else if (mark.remark() == null) {
            decoder.arrived(mark.atS());
        }
    }
}

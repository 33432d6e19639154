package evenfall.ingest.recorder;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.wire.EitherDecoder;
import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.wire.WireDecoder;
import evenfall.ingest.wire.WireStreams;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Reads back what a {@link WireRecorder} kept in a folder, to its last whole line. */
public final class KeptRecording {

    private static final int BUFFER = 1 << 16;

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
            if (remark(file).isEmpty()) {
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
        List<Path> files = files(folder);
        WireStreams streams = new WireStreams();
        List<Finding> findings = new ArrayList<>();
        for (Path file : files) {
            WireDecoder decoder = new EitherDecoder(streams);
            decode(file, decoder, progress);
            refused(file, decoder.counts(), findings);
        }
        Recording recording = streams.recording(folder.toString())
                .orElseThrow(() -> new UnusableInputException("There is no whole line of the pelvis sensor in " + folder
                        + "; look whether it was switched on and sends lines that begin with P."));
        double endS = recording.pelvis().stream().durationS();
        for (Path file : files) {
            ended(file, endS, findings);
        }
        SensorRecording pelvis = recording.pelvis();
        List<Finding> all = new ArrayList<>(pelvis.findings());
        all.addAll(findings);
        return new Recording(
                new SensorRecording(pelvis.source(), pelvis.stream(), pelvis.axes(), all), recording.upperBack());
    }

    private static void decode(Path file, WireDecoder decoder, Progress progress) throws IOException {
        long size = Math.max(1, Files.size(file));
        long done = 0;
        byte[] buffer = new byte[BUFFER];
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                decoder.accept(buffer, 0, count);
                done += count;
                progress.at("reading " + file.getFileName(), Math.min(1, (double) done / size));
            }
        }
        decoder.end();
    }

    private static void refused(Path file, WireCounts counts, List<Finding> findings) {
        if (counts.bad() > 0) {
            double share = (double) counts.bad() / (counts.bad() + counts.good());
            findings.add(new Finding(
                    FindingCode.REFUSED_ROWS,
                    share > 0.01 ? Severity.WARNING : Severity.NOTE,
                    String.format(
                            Locale.ROOT,
                            "%d of %d lines in %s were left out (%d damaged on the way, %d no sample at all): look at the cable"
                                    + " and the speed of the port.",
                            counts.bad(),
                            counts.bad() + counts.good(),
                            file.getFileName(),
                            counts.damaged(),
                            counts.unreadable()),
                    null,
                    null));
        }
    }

    private static void ended(Path file, double endS, List<Finding> findings) throws IOException {
        String remark = remark(file);
        if (remark.isEmpty()) {
            findings.add(new Finding(
                    FindingCode.CUT_SHORT,
                    Severity.WARNING,
                    String.format(
                            Locale.ROOT,
                            "The recording was cut short at about %.1f s (the program or the machine stopped): all that had"
                                    + " come is here, the end of the session is not.",
                            endS),
                    null,
                    endS));
        } else if (remark.equals(Remark.GONE.code())) {
            findings.add(new Finding(
                    FindingCode.CUT_SHORT,
                    Severity.WARNING,
                    String.format(
                            Locale.ROOT,
                            "The port was lost at about %.1f s: look at the cable; what came after is not here.",
                            endS),
                    null,
                    endS));
        }
    }

    /** How the file says it ended, or nothing. */
    private static String remark(Path file) throws IOException {
        String name = file.getFileName().toString();
        Path arrivals = file.resolveSibling(
                name.substring(0, name.length() - PortFile.ENDING.length()) + PortFile.ARRIVALS_ENDING);
        if (!Files.exists(arrivals)) {
            return "";
        }
        String last = "";
        try (Stream<String> lines = Files.lines(arrivals, StandardCharsets.ISO_8859_1)) {
            last = lines.reduce("", (before, line) -> line);
        }
        for (Remark remark : Remark.values()) {
            if (last.endsWith("," + remark.code())) {
                return remark.code();
            }
        }
        return "";
    }
}

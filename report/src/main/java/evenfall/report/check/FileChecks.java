package evenfall.report.check;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.quality.QualityCheck;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.table.RecordingFiles;
import evenfall.report.result.RecordingInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Looks files over one by one.
 *
 * <p>Where a sensor was worn is told by the layout, or by the name of the file ({@code pelvis} or {@code sacrum};
 * {@code back}, {@code trunk} or {@code thorax}).
 */
public final class FileChecks {

    private FileChecks() {}

    /**
     * Checks files.
     *
     * @param layout how the files are laid out, or null where their headers say enough
     * @return one entry a file, in the order given
     * @throws UnusableInputException if one of them cannot be used
     */
    public static List<CheckedFile> check(List<Path> files, @Nullable Path layout, Progress progress)
            throws IOException {
        files.forEach(RecordingInput::requireFile);
        if (layout != null) {
            RecordingInput.requireFile(layout);
        }
        List<CheckedFile> checked = new ArrayList<>();
        for (Path file : files) {
            checked.add(one(file, RecordingFiles.read(file, null, layout, progress), place(file)));
        }
        return checked;
    }

    private static CheckedFile one(Path file, Recording recording, @Nullable Place place) {
        SensorRecording upperBack = recording.upperBack();
        if (upperBack == null) {
            return checked(file, recording.pelvis(), at(QualityCheck.check(recording.pelvis()), place));
        }
        List<Finding> findings = new ArrayList<>(at(QualityCheck.check(recording.pelvis()), Place.PELVIS));
        findings.addAll(at(QualityCheck.check(upperBack), Place.UPPER_BACK));
        return checked(file, recording.pelvis(), findings);
    }

    private static List<Finding> at(List<Finding> findings, @Nullable Place place) {
        return place == null
                ? findings
                : findings.stream().map(finding -> finding.at(place)).toList();
    }

    private static CheckedFile checked(Path file, SensorRecording recording, List<Finding> findings) {
        List<Finding> inOrder = new ArrayList<>(findings);
        inOrder.sort(Comparator.comparingDouble(FileChecks::moment));
        return new CheckedFile(
                file.toString(),
                recording.stream().rateHz(),
                recording.stream().durationS(),
                recording.stream().size(),
                inOrder);
    }

    private static double moment(Finding finding) {
        Double at = finding.atS();
        return at == null ? Double.NEGATIVE_INFINITY : at;
    }

    private static @Nullable Place place(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.contains("pelvis") || name.contains("sacrum")) {
            return Place.PELVIS;
        }
        return name.contains("back") || name.contains("trunk") || name.contains("thorax") ? Place.UPPER_BACK : null;
    }
}

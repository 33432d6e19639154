package evenfall.report.check;

import evenfall.fusion.analysis.BodyChecks;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.place.Place;
import evenfall.ingest.quality.QualityCheck;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Looks files over one by one, and two of them as a pair where one is the pelvis's and one the upper back's.
 *
 * <p>Which is which is told by the layout, by the names of the files ({@code pelvis} or {@code sacrum}; {@code back},
 * {@code trunk} or {@code thorax}), or, for two files whose names say nothing, by their order.
 */
public final class FileChecks {

    private FileChecks() {}

    /** Reads a recorded file. */
    @FunctionalInterface
    public interface Reader {

        /**
         * The recording in a file.
         *
         * @throws UnusableInputException if it cannot be used; says why
         */
        Recording read(Path file) throws IOException;
    }

    /**
     * Checks files; one that cannot be used hides nothing of the others.
     *
     * @param reader how a file is read
     */
    public static Checks check(List<Path> files, Reader reader) throws IOException {
        List<Path> usable = new ArrayList<>();
        List<Recording> recordings = new ArrayList<>();
        Set<String> refusals = new LinkedHashSet<>(); // a layout that cannot be used is refused for every file
        for (Path file : files) {
            try {
                recordings.add(reader.read(file));
                usable.add(file);
            } catch (UnusableInputException e) {
                refusals.add(String.valueOf(e.getMessage()));
            }
        }
        return new Checks(check(usable, recordings), List.copyOf(refusals));
    }

    private static List<CheckedFile> check(List<Path> files, List<Recording> recordings) {
        List<@Nullable Place> places = new ArrayList<>();
        files.forEach(file -> places.add(place(file)));
        boolean named = places.contains(Place.PELVIS) && places.contains(Place.UPPER_BACK);
        boolean nameless = places.stream().allMatch(Objects::isNull);
        boolean single = recordings.stream().allMatch(recording -> recording.upperBack() == null);
        if (files.size() == 2 && (named || nameless) && single) {
            boolean turned = places.get(0) == Place.UPPER_BACK;
            return pair(files, recordings, turned);
        }
        List<CheckedFile> checked = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            checked.add(one(files.get(i), recordings.get(i), places.get(i)));
        }
        return checked;
    }

    private static CheckedFile one(Path file, Recording recording, @Nullable Place place) {
        SensorRecording upperBack = recording.upperBack();
        if (upperBack == null) {
            List<Finding> findings = new ArrayList<>(QualityCheck.check(recording.pelvis()));
            findings.addAll(body(BodyChecks.find(recording.pelvis()), findings));
            return checked(file, recording.pelvis(), at(findings, place));
        }
        List<Finding> findings = new ArrayList<>(at(QualityCheck.check(recording.pelvis()), Place.PELVIS));
        findings.addAll(at(QualityCheck.check(upperBack), Place.UPPER_BACK));
        findings.addAll(body(BodyChecks.find(recording), findings));
        return checked(file, recording.pelvis(), findings);
    }

    private static List<CheckedFile> pair(List<Path> files, List<Recording> recordings, boolean turned) {
        SensorRecording first = recordings.get(0).pelvis();
        SensorRecording second = recordings.get(1).pelvis();
        Place firstPlace = turned ? Place.UPPER_BACK : Place.PELVIS;
        Place secondPlace = turned ? Place.PELVIS : Place.UPPER_BACK;
        List<Finding> ofFirst = new ArrayList<>(at(QualityCheck.check(first), firstPlace));
        List<Finding> ofSecond = new ArrayList<>(at(QualityCheck.check(second), secondPlace));
        Recording both = turned ? new Recording(second, first) : new Recording(first, second);
        for (Finding finding : BodyChecks.find(both)) {
            List<Finding> own = finding.sensor() == secondPlace ? ofSecond : ofFirst;
            own.addAll(body(List.of(finding), own));
            if (finding.sensor() == null) {
                ofSecond.add(finding);
            }
        }
        return List.of(checked(files.get(0), first, ofFirst), checked(files.get(1), second, ofSecond));
    }

    /** Samples in the wrong unit, or none worth the name, say nothing about how a sensor sits. */
    private static List<Finding> body(List<Finding> ofBody, List<Finding> ofSamples) {
        boolean unsound = ofSamples.stream()
                .anyMatch(finding -> finding.code() == FindingCode.UNITS || finding.code() == FindingCode.DEAD_SENSOR);
        boolean dead = ofSamples.stream().anyMatch(finding -> finding.code() == FindingCode.DEAD_SENSOR);
        return unsound
                ? ofBody.stream()
                        .filter(finding -> !dead || finding.code() != FindingCode.GYRO_SENSE)
                        .filter(finding -> finding.code() != FindingCode.STRAP_MOVED
                                && finding.code() != FindingCode.SENSORS_SWAPPED)
                        .toList()
                : ofBody;
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

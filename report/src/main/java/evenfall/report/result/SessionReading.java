package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.parallel.Aside;
import evenfall.ingest.place.Place;
import evenfall.ingest.progress.Progress;
import evenfall.ingest.quality.QualityCheck;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads and analyses recordings and puts sessions together. */
public final class SessionReading {

    private static final Words WORDS = Words.beside(SessionReading.class);

    private SessionReading() {}

    /** The session of files that are in no log, of an athlete of whom nothing is known. */
    public static Session ofFiles(RecordingInput files, FilterKind filter, FormStandard standard, Progress progress)
            throws IOException {
        return Session.of(
                null,
                null,
                files.names(),
                analyse(files, filter, progress),
                filter,
                standard,
                Map.of(),
                Set.of(),
                List.of());
    }

    /** Reads and analyses; says why trunk measures are missing where only the pelvis was recorded. */
    public static RecordingAnalysis analyse(RecordingInput files, FilterKind filter, Progress progress)
            throws IOException {
        return analyse(files.read(progress), filter, progress);
    }

    /** Looks the samples over and analyses; says why trunk measures are missing where only the pelvis was recorded. */
    public static RecordingAnalysis analyse(Recording recording, FilterKind filter, Progress progress) {
        RecordingAnalysis analysis = new RecordingAnalyser(filter).analyse(checked(recording), progress);
        boolean told = analysis.findings().stream().anyMatch(finding -> finding.code() == FindingCode.NO_UPPER_BACK);
        if (recording.upperBack() != null || told) {
            return analysis;
        }
        List<Finding> findings = new ArrayList<>(analysis.findings());
        findings.add(new Finding(
                FindingCode.NO_UPPER_BACK, Severity.NOTE, WORDS.say("no.upper.back"), Place.UPPER_BACK, null));
        return analysis.withFindings(findings);
    }

    /** The same recording; what its samples show stands among its findings. */
    private static Recording checked(Recording recording) {
        SensorRecording worn = recording.upperBack();
        Aside<SensorRecording> aside =
                worn == null ? null : Aside.start("check upper back", () -> checked(worn, Place.UPPER_BACK));
        SensorRecording pelvis = checked(recording.pelvis(), Place.PELVIS);
        return new Recording(pelvis, aside == null ? null : aside.result());
    }

    private static SensorRecording checked(SensorRecording sensor, Place place) {
        List<Finding> findings = QualityCheck.check(sensor).stream()
                .map(finding -> finding.at(place))
                .toList();
        return new SensorRecording(sensor.source(), sensor.stream(), sensor.axes(), findings);
    }
}

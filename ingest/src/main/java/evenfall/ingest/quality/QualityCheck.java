package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Looks a stream over and says what is wrong or doubtful, each with the time where it first happens.
 *
 * <p>Findings are grouped: the same trouble many times over is told once, with how often and for how long. They name no
 * place on the body ({@link Finding#at}); what a reader had to refuse stands in its own findings.
 */
public final class QualityCheck {

    private QualityCheck() {}

    /**
     * What reading brought to light and what the samples show, together; what the reader told is not told again.
     *
     * @return findings in order of time, those without a moment first
     */
    public static List<Finding> check(SensorRecording recording) {
        List<Finding> findings = new ArrayList<>(recording.findings());
        Set<FindingCode> told = EnumSet.noneOf(FindingCode.class);
        recording.findings().forEach(finding -> told.add(finding.code()));
        for (Finding finding : check(recording.stream())) {
            boolean repeated = finding.code() == FindingCode.REPEATED_TIME && told.contains(finding.code());
            if (!repeated) {
                findings.add(finding);
            }
        }
        findings.sort(Comparator.comparingDouble(QualityCheck::moment));
        return List.copyOf(findings);
    }

    /** Findings in order of time; those of the whole stream first. A pure function of the stream. */
    public static List<Finding> check(SensorStream stream) {
        List<Finding> findings = new ArrayList<>();
        Steps steps = Steps.of(stream);
        findings.addAll(ClockCheck.check(stream, steps));
        findings.addAll(GapCheck.check(stream, steps));
        findings.addAll(ClippingCheck.check(stream));
        StuckCheck stuck = StuckCheck.of(stream);
        findings.addAll(stuck.findings());
        boolean forceSpoilt = stuck.spoils(Axis.ACCELEROMETER);
        boolean rateSpoilt = stuck.spoils(Axis.GYROSCOPE);
        List<Finding> turnUnits = forceSpoilt || rateSpoilt ? List.of() : TurnUnitsCheck.check(stream);
        for (Finding finding : RestCheck.check(stream)) {
            boolean ofGyroscope = finding.code() == FindingCode.GYRO_BIAS;
            // A bias in a wrong unit is no bias, and one seen against force in a stuck accelerometer neither.
            if (!(ofGyroscope ? rateSpoilt || forceSpoilt || !turnUnits.isEmpty() : forceSpoilt)) {
                findings.add(finding);
            }
        }
        findings.addAll(turnUnits);
        findings.sort(Comparator.comparingDouble(QualityCheck::moment));
        return List.copyOf(findings);
    }

    private static double moment(Finding finding) {
        Double at = finding.atS();
        return at == null ? Double.NEGATIVE_INFINITY : at;
    }
}

package evenfall.report.check;

import evenfall.ingest.finding.Finding;
import java.util.List;

/**
 * One file looked over.
 *
 * @param file the file as it was named
 * @param rateHz true rate of its (first) sensor, Hz
 * @param durationS last minus first time stamp of its (first) sensor, s
 * @param samples samples of its (first) sensor
 * @param findings what is wrong or doubtful, in order of time
 */
public record CheckedFile(String file, double rateHz, double durationS, int samples, List<Finding> findings) {

    public CheckedFile {
        findings = List.copyOf(findings);
    }
}

package evenfall.ingest.recording;

import evenfall.ingest.finding.Finding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One sensor's part of a recording and what reading it brought to light.
 *
 * @param source where it came from, as a person would name it (a file name, a port)
 * @param stream the samples
 * @param axes the mounting if the layout states it, else null
 * @param findings what the reader had to refuse or mend
 */
public record SensorRecording(
        String source, SensorStream stream, @Nullable BodyAxes axes, List<Finding> findings) {

    public SensorRecording {
        findings = List.copyOf(findings);
    }
}

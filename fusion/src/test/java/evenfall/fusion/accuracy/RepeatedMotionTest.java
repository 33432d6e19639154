package evenfall.fusion.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.analysis.RecordingAnalyser;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.progress.Progress;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A recording that plays the same half minute over and over: clocks could be a whole repetition wrong. */
class RepeatedMotionTest {

    @Test
    void clocks_areTakenAsSwitchedOnTogether_andCalledUncertain() {
        RecordingAnalysis once = analyse(60);
        RecordingAnalysis often = analyse(900);

        double offset = clock(once).offsetS();
        assertThat(once.findings()).noneMatch(finding -> finding.code() == FindingCode.CLOCK_UNCERTAIN);
        assertThat(clock(often).offsetS()).isCloseTo(offset, within(0.01));
        assertThat(often.findings()).anyMatch(finding -> finding.code() == FindingCode.CLOCK_UNCERTAIN);
    }

    private static ClockMap clock(RecordingAnalysis analysis) {
        return Objects.requireNonNull(analysis.clock());
    }

    private static RecordingAnalysis analyse(double lengthS) {
        return new RecordingAnalyser(FilterKind.TWO_PASS).analyse(new LongSession(100).until(lengthS), Progress.NONE);
    }
}

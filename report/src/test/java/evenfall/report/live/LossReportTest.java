package evenfall.report.live;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A sensor at 200 Hz that is heard through a radio; the truth is what was lost. */
class LossReportTest {

    private static final double RATE_HZ = 200;

    private final LossReport report = new LossReport();
    private final SensorStream.Builder samples = new SensorStream.Builder();
    private final SplittableRandom random = new SplittableRandom(4);
    private final List<String> said = new ArrayList<>();
    private int sent;
    private double nowS;

    @Test
    void samplesThatGetLost_areToldOnce_andWhenItIsOver() {
        go(40, 0.12, 1);

        assertThat(said).singleElement().asString().contains("pelvis").contains("nearer");
        assertThat(said.get(0)).containsPattern("1[1-3] in 100");
        go(40, 0, 1);
        assertThat(said).hasSize(2);
        assertThat(said.get(1)).startsWith("Hardly any samples of the pelvis sensor");
    }

    @Test
    void fewLostSamples_areNoNews() {
        go(60, 0.02, 1);

        assertThat(said).isEmpty();
    }

    @Test
    void samplesThatComeTogether_areNotLost() {
        go(60, 0, 8);

        assertThat(said).isEmpty();
    }

    @Test
    void aSensorThatWasSilent_isNoLoss() {
        go(20, 0, 1);
        sent += 5000;
        go(20, 0, 1);

        assertThat(said).isEmpty();
    }

    private void go(double seconds, double lost, int together) {
        for (double end = nowS + seconds; nowS < end; nowS += 0.1) {
            for (int k = 0; k < RATE_HZ / 10; k++, sent++) {
                if (random.nextDouble() >= lost) {
                    samples.add(sent / together * together / RATE_HZ, 0, 0, 9.8, 0, 0, 0);
                }
            }
            said.addAll(report.at(
                    nowS,
                    () -> Optional.of(
                            new Recording(new SensorRecording("pelvis", samples.soFar(), null, List.of()), null))));
        }
    }
}

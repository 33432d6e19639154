package evenfall.ingest.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Recordings of real people and of a simulator, read by {@link OpenRecordings}.
 *
 * <p>Sources: the data's own notes (BROAD, doi 10.3390/data6070072; SisFall, doi 10.3390/s17010198); which sessions have
 * gaps and saturated samples stands in the simulator's truth.json.
 */
class OpenRecordingsTest {

    @Test
    void evenlySampledRecordingsOfAHandHeldSensorShowNothing() throws IOException {
        for (Path file : OpenRecordings.files("broad", ".*_[ABC]\\.csv\\.gz")) {
            assertThat(QualityCheck.check(OpenRecordings.read(file)))
                    .as(file.toString())
                    .isEmpty();
        }
    }

    @Test
    void waistRecordingsOfDailyLifeShowNothingButClipping() throws IOException {
        for (Path file : OpenRecordings.files("sisfall", ".*\\.txt\\.gz")) {
            assertThat(codes(file)).as(file.toString()).isSubsetOf(Set.of(FindingCode.CLIPPING));
        }
    }

    @Test
    void simulatedSessionsShowTheirGapsAndSaturatedSamplesAndNothingElse() throws IOException {
        Set<String> gappy = Set.of("s4", "s5", "s6", "s7");
        for (Path file : OpenRecordings.files("landings", "(pelvis|upper-back)\\.csv\\.gz")) {
            String session = file.getName(file.getNameCount() - 2).toString();
            Set<FindingCode> expected = EnumSet.noneOf(FindingCode.class);
            if (gappy.contains(session)) {
                expected.addAll(Set.of(FindingCode.GAP, FindingCode.LOST_SAMPLES));
            }
            if (session.equals("s6") && file.getFileName().toString().startsWith("pelvis")) {
                expected.add(FindingCode.CLIPPING);
            }
            assertThat(codes(file)).as(file.toString()).isEqualTo(expected);
        }
    }

    /** Source: truth.json of s4, {@code sensors.pelvis.gaps}: start of each on the sensor's clock and samples lost. */
    @Test
    void gapsStandWhereTheSimulatorCutThem() throws IOException {
        SensorStream stream =
                OpenRecordings.read(OpenRecordings.folder("landings").resolve("s4/pelvis.csv.gz"));
        List<Finding> gaps = QualityCheck.check(stream).stream()
                .filter(finding -> finding.code() == FindingCode.GAP)
                .toList();

        double[] startS = {44.9993, 59.5543, 74.7043, 94.7943, 98.7643, 107.3343};
        int[] lost = {2, 15, 13, 12, 10, 5};
        assertThat(gaps).hasSize(startS.length);
        for (int i = 0; i < startS.length; i++) {
            assertThat(gaps.get(i).atS()).isCloseTo(startS[i] - stream.clockStartS(), within(0.012));
            assertThat(gaps.get(i).message()).contains("(" + lost[i] + " samples missing)");
        }
    }

    private static Set<FindingCode> codes(Path file) throws IOException {
        Set<FindingCode> codes = EnumSet.noneOf(FindingCode.class);
        QualityCheck.check(OpenRecordings.read(file)).forEach(finding -> codes.add(finding.code()));
        return codes;
    }
}

package evenfall.fusion.orientation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.fusion.accuracy.OpenData;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The filters on the {@link OpenTrials}. The published filter's own program reaches 0.552 deg causal and 0.306 deg offline
 * on these trials (0.684 and 0.466 as it comes). They are development data: one set of parameters was chosen on these, on
 * changed versions of them and on other recordings (see the method page).
 */
class OpenOrientationTest {

    @Test
    void inclinationIsAsGoodAsThePublishedFiltersOwn() throws IOException {
        Optional<Path> folder = OpenData.folder("broad");
        assumeTrue(folder.isPresent(), OpenData.missing("broad"));
        double[] live = new double[2];
        double[] twoPass = new double[2];
        double[] madgwick = new double[2];
        double[] complementary = new double[2];
        for (String name : OpenTrials.NAMES) {
            OpenTrials.Trial trial = OpenTrials.read(folder.orElseThrow(), name);
            addErrors(trial, FilterKind.LIVE, live);
            addErrors(trial, FilterKind.TWO_PASS, twoPass);
            addErrors(trial, FilterKind.MADGWICK, madgwick);
            addErrors(trial, FilterKind.COMPLEMENTARY, complementary);
        }
        assertThat(live[0]).isLessThan(0.352);
        assertThat(twoPass[0]).isLessThan(0.251);
        assertThat(live[1]).isLessThan(0.503);
        assertThat(twoPass[1]).isLessThan(0.449);
        // the default has to beat the plain filters clearly
        assertThat(madgwick[0]).isBetween(2 * live[0], 2.5);
        assertThat(complementary[0]).isBetween(2 * live[0], 7.0);
    }

    /** Bounds are what was measured and a little more; the constants were chosen on these trials at these limits. */
    @ParameterizedTest
    @CsvSource({"3, 8.2, 5.6", "4, 4.7, 3.5", "5, 3.1, 1.95", "6, 2.2, 1.46", "8, 1.32, 0.94"})
    void whatAGyroscopeThatClipsDoesNotShowIsMadeUp(double limit, double live, double twoPass) throws IOException {
        Optional<Path> folder = OpenData.folder("broad");
        assumeTrue(folder.isPresent(), OpenData.missing("broad"));
        double[] liveMean = new double[2];
        double[] twoPassMean = new double[2];
        for (String name : OpenTrials.NAMES) {
            OpenTrials.Trial trial = OpenTrials.read(folder.orElseThrow(), name).clippedAt(limit);
            addErrors(trial, FilterKind.LIVE, liveMean);
            addErrors(trial, FilterKind.TWO_PASS, twoPassMean);
        }
        assertThat(liveMean[0]).isLessThan(live);
        assertThat(twoPassMean[0]).isLessThan(twoPass);
    }

    /** Adds a trial's share of the mean error, after the delay and as it comes. */
    private static void addErrors(OpenTrials.Trial trial, FilterKind kind, double[] means) {
        OpenTrials.Inclination error = trial.error(kind);
        means[0] += error.delayed() / OpenTrials.NAMES.size();
        means[1] += error.asItComes() / OpenTrials.NAMES.size();
    }
}

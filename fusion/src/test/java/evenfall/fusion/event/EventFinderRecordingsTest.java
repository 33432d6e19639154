package evenfall.fusion.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenfall.fusion.accuracy.OpenData;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OrientationEstimator;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the finder must do on open recordings of people (Sucerquia, Lopez and Vargas-Bonilla 2017, Sensors 17:198) and
 * on simulated drops with known truth. The table may only be tightened.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class EventFinderRecordingsTest {

    private static final Pattern TRUE_PEAK =
            Pattern.compile("\"peak_pelvis\": \\{.*?\"t_peak_own_clock_s\": ([0-9.]+)", Pattern.DOTALL);

    private Path people = Path.of("");
    private Path simulated = Path.of("");

    @BeforeAll
    void findFolder() {
        Optional<Path> sisfall = OpenData.folder("sisfall");
        Optional<Path> landings = OpenData.folder("landings");
        assumeTrue(sisfall.isPresent(), OpenData.missing("sisfall"));
        assumeTrue(landings.isPresent(), OpenData.missing("landings"));
        people = sisfall.orElseThrow();
        simulated = landings.orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            recording,           files, landings, missed, extra, with steps, without steps, with falls, without falls
            D01 walking,             8,        0,      0,     0,          0,             8,          0,             8
            D02 walking quickly,     8,        0,      0,     0,          0,             8,          0,             8
            D03 jogging,             8,        0,      0,     0,          8,             0,          0,             8
            D04 jogging quickly,     8,        0,      0,     0,          8,             0,          0,             8
            D05 stairs,             16,        0,      0,     0,          0,            16,          0,            16
            D06 stairs quickly,     16,        0,      0,     0,          0,             0,          0,            15
            D08 sitting down,        8,        0,      0,     0,          0,             8,          0,             8
            D10 on a low chair,     16,        0,      0,     0,          0,            16,          0,            16
            D11 collapsing,          8,        0,      0,     0,          0,             8,          0,             8
            D15 squatting,          16,        0,      0,     0,          0,            16,          0,            16
            D16 bending,            16,        0,      0,     0,          0,            16,          0,            16
            D18 stumbling,          16,        0,      0,     0,          0,             0,          0,            15
            D19 jumping,            40,       80,      0,     0,          0,            40,          0,            40
            F01 fall walking,        8,        0,      0,     0,          0,             0,          7,             0
            F05 fall jogging,        8,        0,      0,     0,          7,             0,          7,             0
            F06 fall fainting,       8,        0,      0,     0,          0,             0,          7,             0
            F14 fall from sitting,   8,        0,      0,     0,          0,             0,          6,             0
            """)
    void people(
            String activity,
            int files,
            int landings,
            int missed,
            int extra,
            int withSteps,
            int withoutSteps,
            int withFalls,
            int withoutFalls)
            throws IOException {
        FinderTally tally = FinderTally.ofActivity(people, activity.substring(0, 3), FilterKind.TWO_PASS);
        assertThat(tally.files()).isEqualTo(files);
        assertThat(tally.landings()).isEqualTo(landings);
        assertThat(tally.missed()).as("missed").hasSizeLessThanOrEqualTo(missed);
        assertThat(tally.extra()).as("extra").hasSizeLessThanOrEqualTo(extra);
        assertThat(tally.withSteps()).as("files with steps").isBetween(withSteps, files - withoutSteps);
        assertThat(tally.withFalls()).as("files with falls").isBetween(withFalls, files - withoutFalls);
    }

    /** The same told while it happens, one trial of each person. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            recording,           landings, with falls, without falls
            D01 walking,                0,          0,             8
            D04 jogging quickly,        0,          0,             8
            D06 stairs quickly,         0,          0,             8
            D08 sitting down,           0,          0,             8
            D11 collapsing,             0,          0,             8
            D16 bending,                0,          0,             8
            D19 jumping,               16,          0,             8
            F06 fall fainting,          0,          7,             0
            """)
    void people_while_it_happens(String activity, int landings, int withFalls, int withoutFalls) throws IOException {
        FinderTally tally = FinderTally.ofActivityLive(people, activity.substring(0, 3), false);
        assertThat(tally.landings()).isEqualTo(landings);
        assertThat(tally.missed()).as("missed").isEmpty();
        assertThat(tally.extra()).as("extra").isEmpty();
        assertThat(tally.withFalls()).as("files with falls").isBetween(withFalls, 8 - withoutFalls);
    }

    @ParameterizedTest
    @ValueSource(strings = {"s1", "s2", "s3", "s4", "s5", "s6", "s7", "s8", "s9"})
    void simulated_sessions_show_every_drop_and_nothing_else(String session) throws IOException {
        SensorStream stream = OpenRecordings.simulated(simulated.resolve(session + "/pelvis.csv.gz"));
        List<Double> peaks = new ArrayList<>();
        Matcher matcher = TRUE_PEAK.matcher(Files.readString(simulated.resolve(session + "/truth.json")));
        while (matcher.find()) {
            peaks.add(Double.parseDouble(matcher.group(1)) - stream.clockStartS());
        }
        assertThat(peaks).as("true landings").hasSizeGreaterThan(5);
        FinderTally tally = new FinderTally();
        tally.add(session, events(stream), peaks);
        assertThat(tally.missed()).as("missed").isEmpty();
        assertThat(tally.extra()).as("extra").isEmpty();
        assertThat(tally.withSteps() + tally.withFalls()).as("steps and falls").isZero();
    }

    /** Source: the sessions' notes; two heel drops in each opening. */
    @ParameterizedTest
    @ValueSource(strings = {"s1", "s2", "s3", "s4", "s5", "s6", "s7", "s8", "s9"})
    void simulated_openings_show_two_heel_drops(String session) throws IOException {
        SensorStream stream = OpenRecordings.simulated(simulated.resolve(session + "/pelvis.csv.gz"));
        OrientationTrack track = OrientationEstimator.estimate(stream, FilterKind.LIVE);
        double firstS = new EventFinder().find(stream, track).get(0).startS();
        assertThat(new EventFinder().heelDrops(stream, track, 0).stream().filter(at -> at < firstS - 1))
                .hasSize(2);
    }

    private static List<Event> events(SensorStream stream) {
        return new EventFinder().find(stream, OrientationEstimator.estimate(stream, FilterKind.TWO_PASS));
    }
}

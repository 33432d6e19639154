package evenfall.report.result;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.landing.LandingTrace;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The signals beside the results: what is read is what was stored, or nothing. */
class StoredTracesTest {

    private static final String DOCUMENT = "{\"landings\": [\"é\"]}";

    @TempDir
    private Path folder;

    private SessionFolder session;

    @BeforeEach
    void aSession() throws IOException {
        session = TrainingLog.open(folder.resolve("log"))
                .athlete("invented")
                .session(SessionDate.parse("2026-03-02").orElseThrow());
    }

    @Test
    void whatWasStoredIsReadToATenThousandth() throws IOException {
        Map<Integer, LandingTrace> traces =
                Map.of(2, trace(1, 700, true), 11, trace(2, 3, false), 5, trace(3, 1, true));
        StoredTraces.store(session, DOCUMENT, traces);
        Map<Integer, LandingTrace> read = StoredTraces.read(session, DOCUMENT).orElseThrow();
        assertThat(read.keySet()).isEqualTo(traces.keySet());
        traces.forEach((landing, trace) -> {
            LandingTrace other = Objects.requireNonNull(read.get(landing));
            same(trace.timeS(), other.timeS());
            same(trace.pelvisG(), other.pelvisG());
            same(trace.heightM(), other.heightM());
            same(trace.verticalSpeedMS(), other.verticalSpeedMS());
            same(trace.pelvicTilt(), other.pelvicTilt());
            same(trace.pelvicObliquity(), other.pelvicObliquity());
            same(trace.pelvicRotation(), other.pelvicRotation());
            same(trace.upperBackG(), other.upperBackG());
            same(trace.trunkFlexion(), other.trunkFlexion());
            same(trace.trunkLean(), other.trunkLean());
            same(trace.twist(), other.twist());
        });
    }

    @Test
    void aPlainUnzipperShowsATable() throws IOException {
        StoredTraces.store(session, DOCUMENT, Map.of(1, trace(4, 2, false)));
        try (var in = new GZIPInputStream(Files.newInputStream(session.resultFile("traces.csv.gz")))) {
            String[] lines = new String(in.readAllBytes(), StandardCharsets.US_ASCII).split("\n");
            assertThat(lines).hasSize(4);
            assertThat(lines[1]).startsWith("landing,time_s,pelvis_g,height_m,");
            assertThat(lines[2]).matches("1(,-?\\d+(\\.\\d{1,4})?){7}");
        }
    }

    @Test
    void signalsOfOtherResultsAreNone() throws IOException {
        StoredTraces.store(session, DOCUMENT, Map.of(1, trace(5, 40, true)));
        assertThat(StoredTraces.read(session, DOCUMENT + " ")).isEmpty();
        assertThat(StoredTraces.read(session, DOCUMENT.replace("é", "e"))).isEmpty();
    }

    @Test
    void damagedSignalsAreNone() throws IOException {
        assertThat(StoredTraces.read(session, DOCUMENT)).isEmpty();
        StoredTraces.store(session, DOCUMENT, Map.of(1, trace(6, 200, true), 2, trace(7, 200, true)));
        Path file = session.resultFile("traces.csv.gz");
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(8);
        for (int k = 0; k < 300; k++) {
            byte[] damaged = k % 2 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            if (k % 2 == 1) {
                // The ten bytes in front hold a time and a system, which nothing depends on.
                damaged[10 + random.nextInt(whole.length - 10)] ^= (byte) (1 << random.nextInt(8));
            }
            Files.write(file, damaged);
            assertThat(StoredTraces.read(session, DOCUMENT)).as("try %d", k).isEmpty();
        }
    }

    private static void same(double @Nullable [] expected, double @Nullable [] actual) {
        if (expected == null || actual == null) {
            assertThat(actual).isEqualTo(expected);
            return;
        }
        assertThat(actual).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            assertThat(Math.abs(actual[i] - expected[i])).isLessThan(0.50001e-4);
        }
    }

    private static LandingTrace trace(long seed, int size, boolean both) {
        Random random = new Random(seed);
        double[][] c = new double[11][];
        for (int k = 0; k < c.length; k++) {
            c[k] = random.doubles(size, -180, 180).toArray();
        }
        return new LandingTrace(
                c[0],
                c[1],
                both ? c[2] : null,
                c[3],
                c[4],
                c[5],
                c[6],
                c[7],
                both ? c[8] : null,
                both ? c[9] : null,
                both ? c[10] : null);
    }
}

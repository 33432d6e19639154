package evenfall.report.result;

import evenfall.fusion.landing.LandingTrace;
import evenfall.report.csv.PlainNumber;
import evenfall.report.log.SessionFolder;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The signals of a session's landings beside its results, so that its pages need not analyse the raw files once more: a
 * gzipped table, a row a moment, of which {@code docs/log.md} tells the columns. Its first line names the results it
 * belongs to; signals of other results, or damaged ones, are passed over.
 */
final class StoredTraces {

    private static final String FILE = "traces.csv.gz";
    private static final String HEADER =
            "landing,time_s,pelvis_g,height_m,vertical_speed_m_s,pelvic_tilt_deg,pelvic_obliquity_deg,pelvic_rotation_deg,"
                    + "upper_back_g,trunk_flexion_deg,trunk_lean_deg,twist_deg";
    /** Columns of every trace, and those of one with the upper back besides. */
    private static final int PELVIS = 7;

    private static final int BOTH = 11;

    /** Finer than any chart draws: a tenth of a millisecond, of a millimetre, of a thousandth of g or a degree. */
    private static final double FINENESS = 1e4;

    private static final int MOST_DIGITS = 15;
    private static final double[] POWERS = {1, 10, 100, 1000, 10_000};

    private StoredTraces() {}

    /** Stores signals beside the results they were made with. */
    static void store(SessionFolder folder, String document, Map<Integer, LandingTrace> traces) throws IOException {
        folder.storeResult(FILE, out -> write(out, document, traces));
    }

    private static void write(OutputStream out, String document, Map<Integer, LandingTrace> traces) throws IOException {
        try (Writer writer =
                new BufferedWriter(new OutputStreamWriter(new QuickGzip(out), StandardCharsets.US_ASCII), 1 << 16)) {
            writer.write(mark(document) + "\n" + HEADER + "\n");
            StringBuilder row = new StringBuilder();
            for (Map.Entry<Integer, LandingTrace> landing : new TreeMap<>(traces).entrySet()) {
                double[][] columns = columns(landing.getValue());
                for (int i = 0; i < columns[0].length; i++) {
                    row.setLength(0);
                    row.append(landing.getKey());
                    for (double[] column : columns) {
                        row.append(',').append(PlainNumber.of(Math.rint(column[i] * FINENESS) / FINENESS));
                    }
                    writer.append(row.append('\n'));
                }
            }
        }
    }

    private static double[][] columns(LandingTrace trace) {
        double[][] pelvis = {
            trace.timeS(),
            trace.pelvisG(),
            trace.heightM(),
            trace.verticalSpeedMS(),
            trace.pelvicTilt(),
            trace.pelvicObliquity(),
            trace.pelvicRotation()
        };
        double[] upperBackG = trace.upperBackG();
        double[] flexion = trace.trunkFlexion();
        double[] lean = trace.trunkLean();
        double[] twist = trace.twist();
        if (upperBackG == null || flexion == null || lean == null || twist == null) {
            return pelvis;
        }
        double[][] all = Arrays.copyOf(pelvis, BOTH);
        all[PELVIS] = upperBackG;
        all[PELVIS + 1] = flexion;
        all[PELVIS + 2] = lean;
        all[PELVIS + 3] = twist;
        return all;
    }

    /** The signals stored with these results; empty where there are none, or none that can be read. */
    static Optional<Map<Integer, LandingTrace>> read(SessionFolder folder, String document) {
        Path file = folder.resultFile(FILE);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        byte[] front = (mark(document) + "\n" + HEADER + "\n").getBytes(StandardCharsets.US_ASCII);
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file), 1 << 16)) {
            return Arrays.equals(in.readNBytes(front.length), front)
                    ? Optional.of(new TraceRows(in.readAllBytes()).all())
                    : Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            // They can be made again.
            return Optional.empty();
        }
    }

    /** Reads the rows of the table straight from its bytes: a long session has millions of numbers. */
    private static final class TraceRows {

        private final byte[] bytes;
        private int at;
        private double[] numbers = new double[1 << 12];

        TraceRows(byte[] bytes) {
            this.bytes = bytes;
        }

        Map<Integer, LandingTrace> all() {
            Map<Integer, LandingTrace> traces = new HashMap<>();
            while (at < bytes.length) {
                int landing = (int) next(',');
                int width = width();
                int count = 0;
                boolean same = true;
                while (same) {
                    if (numbers.length < (count + 1) * width) {
                        numbers = Arrays.copyOf(numbers, 2 * numbers.length);
                    }
                    for (int c = 0; c < width; c++) {
                        numbers[count * width + c] = next(c + 1 < width ? ',' : '\n');
                    }
                    count++;
                    int row = at;
                    same = at < bytes.length && next(',') == landing;
                    at = same ? at : row;
                }
                traces.put(landing, trace(count, width));
            }
            return traces;
        }

        /** How many numbers follow in this row. */
        private int width() {
            int commas = 0;
            for (int p = at; p < bytes.length && bytes[p] != '\n'; p++) {
                commas += bytes[p] == ',' ? 1 : 0;
            }
            if (commas + 1 != PELVIS && commas + 1 != BOTH) {
                throw new IllegalArgumentException("a row of " + (commas + 1) + " numbers");
            }
            return commas + 1;
        }

        /** A number of few digits is the quotient of two that are exact, so it is rounded as any parser would. */
        private double next(char end) {
            int p = at;
            boolean negative = p < bytes.length && bytes[p] == '-';
            p += negative ? 1 : 0;
            int first = p;
            long digits = 0;
            int point = -1;
            for (; p < bytes.length && bytes[p] != end; p++) {
                if (bytes[p] == '.' && point < 0) {
                    point = p;
                } else if (bytes[p] >= '0' && bytes[p] <= '9') {
                    digits = 10 * digits + (bytes[p] - '0');
                } else {
                    throw new IllegalArgumentException("no number");
                }
            }
            int decimals = point < 0 ? 0 : p - point - 1;
            if (p == bytes.length || p == first || p - first > MOST_DIGITS || decimals >= POWERS.length) {
                throw new IllegalArgumentException("no number that this program writes");
            }
            at = p + 1;
            double size = digits / POWERS[decimals];
            return negative ? -size : size;
        }

        private LandingTrace trace(int count, int width) {
            double[][] c = new double[BOTH][];
            for (int k = 0; k < width; k++) {
                c[k] = new double[count];
                for (int i = 0; i < count; i++) {
                    c[k][i] = numbers[i * width + k];
                }
            }
            return new LandingTrace(c[0], c[1], c[7], c[2], c[3], c[4], c[5], c[6], c[8], c[9], c[10]);
        }
    }

    private static String mark(String document) {
        CRC32 crc = new CRC32();
        byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
        crc.update(bytes);
        return "# of " + LoggedSessions.DOCUMENT + " of " + bytes.length + " bytes with the CRC-32 "
                + String.format("%08x", crc.getValue());
    }

    /** Packs by the quickest level: a session's end is waited for. */
    private static final class QuickGzip extends GZIPOutputStream {
        QuickGzip(OutputStream out) throws IOException {
            super(out, 1 << 16);
            def.setLevel(Deflater.BEST_SPEED);
        }
    }
}

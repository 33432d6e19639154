package evenfall.report.result;

import evenfall.fusion.landing.LandingTrace;
import evenfall.report.csv.PlainNumber;
import evenfall.report.log.SessionFolder;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

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
        try (InputStream in = Files.newInputStream(file);
                BufferedReader reader = new BufferedReader(
                        new InputStreamReader(new GZIPInputStream(in, 1 << 16), StandardCharsets.US_ASCII), 1 << 16)) {
            if (!mark(document).equals(reader.readLine()) || !HEADER.equals(reader.readLine())) {
                return Optional.empty();
            }
            return Optional.of(read(reader));
        } catch (IOException | NumberFormatException e) {
            // They can be made again.
            return Optional.empty();
        }
    }

    private static Map<Integer, LandingTrace> read(BufferedReader reader) throws IOException {
        Map<Integer, LandingTrace> traces = new HashMap<>();
        List<double[]> rows = new ArrayList<>();
        int landing = 0;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            int comma = line.indexOf(',');
            int of = Integer.parseInt(line, 0, Math.max(0, comma), 10);
            if (of != landing && !rows.isEmpty()) {
                traces.put(landing, trace(rows));
                rows.clear();
            }
            landing = of;
            rows.add(numbers(line, comma + 1));
        }
        if (!rows.isEmpty()) {
            traces.put(landing, trace(rows));
        }
        return traces;
    }

    private static double[] numbers(String line, int from) throws IOException {
        double[] numbers = new double[BOTH];
        int count = 0;
        int start = from;
        while (start <= line.length() && count < BOTH) {
            int end = line.indexOf(',', start);
            end = end < 0 ? line.length() : end;
            numbers[count++] = number(line, start, end);
            start = end + 1;
        }
        if (start <= line.length() || (count != PELVIS && count != BOTH)) {
            throw new IOException("a row of " + count + " numbers");
        }
        return count == BOTH ? numbers : Arrays.copyOf(numbers, count);
    }

    /** A number of few digits is the quotient of two that are exact, so it is rounded as any parser would. */
    private static double number(String line, int start, int end) {
        boolean negative = start < end && line.charAt(start) == '-';
        long digits = 0;
        double unit = 1;
        boolean behind = false;
        if (end - start > MOST_DIGITS || end == start) {
            return Double.parseDouble(line.substring(start, end));
        }
        for (int i = negative ? start + 1 : start; i < end; i++) {
            char c = line.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                unit = behind ? 10 * unit : 1;
            } else if (c == '.' && !behind) {
                behind = true;
            } else {
                return Double.parseDouble(line.substring(start, end));
            }
        }
        return negative ? -digits / unit : digits / unit;
    }

    private static LandingTrace trace(List<double[]> rows) throws IOException {
        int width = rows.get(0).length;
        double[][] c = new double[BOTH][rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            double[] row = rows.get(i);
            if (row.length != width) {
                throw new IOException("rows of " + width + " and of " + row.length + " numbers");
            }
            for (int k = 0; k < width; k++) {
                c[k][i] = row[k];
            }
        }
        boolean both = width == BOTH;
        return new LandingTrace(
                c[0],
                c[1],
                only(both, c[7]),
                c[2],
                c[3],
                c[4],
                c[5],
                c[6],
                only(both, c[8]),
                only(both, c[9]),
                only(both, c[10]));
    }

    private static double @Nullable [] only(boolean there, double[] column) {
        return there ? column : null;
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

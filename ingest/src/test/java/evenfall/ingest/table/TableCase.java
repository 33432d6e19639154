package evenfall.ingest.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/** One case of {@code cases.txt}: how a file is written, and what should come of it. */
final class TableCase {

    static final int ROWS = 250;
    static final double RATE = 200;

    private final List<String[]> fields = new ArrayList<>();

    /** All cases, in order. */
    static List<TableCase> all() throws IOException {
        List<TableCase> cases = new ArrayList<>();
        try (InputStream in = TableCase.class.getResourceAsStream("cases.txt")) {
            if (in == null) {
                throw new IOException("cases.txt is missing");
            }
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                int colon = line.indexOf(':');
                if (line.startsWith(";") || colon < 0) {
                    continue;
                }
                if (line.startsWith("name:")) {
                    cases.add(new TableCase());
                }
                String value = colon + 2 <= line.length() ? line.substring(colon + 2) : "";
                cases.get(cases.size() - 1).fields.add(new String[] {line.substring(0, colon), value});
            }
        }
        return cases;
    }

    String name() {
        return field("name", "");
    }

    String expected() {
        return field("expect", "read");
    }

    int rows() {
        return Integer.parseInt(field("rows", String.valueOf(ROWS)));
    }

    @Nullable String layout() {
        return has("layout") ? field("layout", "") : null;
    }

    /** The rows of the truth that are replaced by something else. */
    List<Integer> replaced() {
        return values("replace").stream()
                .map(text -> Integer.parseInt(text.split(" ", 2)[0]))
                .toList();
    }

    /** The file. */
    byte[] bytes() throws IOException {
        StringBuilder text = new StringBuilder();
        for (String before : values("before")) {
            text.append(before).append(before.endsWith("\n") ? "" : "\n");
        }
        for (String header : values("header")) {
            text.append(header).append('\n');
        }
        for (String header : values("after-header")) {
            text.append(header).append('\n');
        }
        String row = field("row", "");
        boolean comma = has("decimal");
        int count = row.isEmpty() ? 0 : has("rows") && rows() < ROWS ? rows() : ROWS;
        for (int i = 0; i < count; i++) {
            inserted(text, "insert", i);
            if (!inserted(text, "replace", i)) {
                text.append(filled(row, i, comma)).append('\n');
            }
        }
        if (has("no-last-end")) {
            text.setLength(text.length() - 1);
        }
        text.append(field("tail", ""));
        String ends = field("ends", "LF");
        String ended = text.toString();
        if (ends.startsWith("CR")) {
            ended = ended.replace("\n", ends.equals("CR") ? "\r" : "\r\n");
        }
        byte[] plain = ((has("mark") ? "\uFEFF" : "") + ended).getBytes(Charset.forName(field("encoding", "UTF-8")));
        return has("gz") ? gz(plain) : plain;
    }

    static byte[] gz(byte[] plain) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gz = new GZIPOutputStream(bytes)) {
            gz.write(plain);
        }
        return bytes.toByteArray();
    }

    /** The true value of axis {@code c} (0 to 2 in g, 3 to 5 in deg/s) of row {@code i}, in thousandths or hundredths. */
    static int raw(int c, int i) {
        return c < 3
                ? (int) Math.round(1000 * Math.sin(0.05 * i * (c + 1))) + (c == 2 ? 7 : 0)
                : (int) Math.round(9000 * Math.cos(0.03 * i * (c - 1)));
    }

    static double value(int c, int i) {
        return raw(c, i) * (c < 3 ? 0.001 : 0.01);
    }

    /** A row of the truth, its placeholders filled in. */
    static String filled(String row, int i, boolean comma) {
        StringBuilder filled = new StringBuilder();
        int from = 0;
        for (int open = row.indexOf('{'); open >= 0; open = row.indexOf('{', from)) {
            int close = row.indexOf('}', open);
            filled.append(row, from, open);
            String number = number(row.substring(open + 1, close), i);
            filled.append(comma ? number.replace('.', ',') : number);
            from = close + 1;
        }
        return filled.append(row.substring(from)).toString();
    }

    private static String number(String placeholder, int i) {
        double s = i / RATE;
        return switch (placeholder) {
            case "t_s" -> decimal("%.3f", s);
            case "t_ms" -> decimal("%.3f", 1000 * s);
            case "t_us" -> decimal("%.0f", 1e6 * s);
            case "t_ns" -> String.valueOf(1_767_225_600_000_000_000L + i * 5_000_000L);
            case "epoch_ms" -> String.valueOf(1_767_225_600_000L + i * 5L);
            // Over the end of a leap-year February.
            case "iso" ->
                i < 100
                        ? decimal("2028-02-29T23:59:59.%03d+01:00", 500 + 5 * i)
                        : decimal("2028-03-01T00:00:0%.3f+01:00", s - 0.5);
            case "clock" -> decimal("10:15:%06.3f", 57 + s);
            case "n" -> String.valueOf(i);
            case "n16" -> String.valueOf((65500 + i) % 65536);
            default -> measured(placeholder, i);
        };
    }

    private static String measured(String placeholder, int i) {
        int axis = "xyz".indexOf(placeholder.charAt(1));
        boolean acceleration = placeholder.charAt(0) == 'a';
        int c = acceleration ? axis : 3 + axis;
        double value = value(c, i);
        return switch (placeholder.substring(3)) {
            case "g", "dps" -> decimal("%.5f", value);
            case "mg", "mdps" -> decimal("%.2f", 1000 * value);
            case "ms2" -> decimal("%.7f", value * 9.80665);
            case "rads" -> decimal("%.9f", Math.toRadians(value));
            case "mrads" -> decimal("%.6f", 1000 * Math.toRadians(value));
            case "raw" -> String.valueOf(raw(c, i));
            default -> throw new IllegalArgumentException(placeholder);
        };
    }

    private static String decimal(String format, Object value) {
        return String.format(Locale.ROOT, format, value);
    }

    private boolean inserted(StringBuilder text, String name, int i) {
        boolean any = false;
        for (String value : values(name)) {
            String[] parts = value.split(" ", 2);
            if (Integer.parseInt(parts[0]) == i) {
                text.append(parts.length > 1 ? parts[1] : "").append('\n');
                any = true;
            }
        }
        return any;
    }

    private boolean has(String name) {
        return fields.stream().anyMatch(field -> field[0].equals(name));
    }

    private String field(String name, String other) {
        List<String> values = values(name);
        return values.isEmpty() ? other : values.get(0);
    }

    private List<String> values(String name) {
        return fields.stream()
                .filter(field -> field[0].equals(name))
                .map(field -> name.equals("layout") ? field[1] : unescaped(field[1]))
                .toList();
    }

    private static String unescaped(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '\\') {
                plain.append(c);
                continue;
            }
            char kind = text.charAt(++i);
            if (kind == 'u') {
                plain.append((char) Integer.parseInt(text.substring(i + 1, i + 5), 16));
                i += 4;
            } else {
                plain.append(kind == 't' ? '\t' : kind == 'n' ? '\n' : '\0');
            }
        }
        return plain.toString();
    }

    @Override
    public String toString() {
        return name();
    }
}

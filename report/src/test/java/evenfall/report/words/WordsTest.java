package evenfall.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every sentence of every bundle of every module, with none, one and many in its gaps, with what is missing, and whether it is ever said. */
class WordsTest {

    private static final List<String> MODULES = List.of("ingest", "fusion", "report");

    /** Something counted: a number and a word behind it that stands for several. */
    private static final Pattern SEVERAL = Pattern.compile(
            "(?<![\\d.,])1 (?:more |bad |header )?(rows|lines|columns|cells|frames|landings|sessions|weeks|days|steps|files|athletes|notes|minutes|seconds|times|regions|answers"
                    + "|entries|measures|places|gaps|samples|drops|bends)\\b");

    /** A literal, whole or up to a dot behind which something is put. */
    private static final Pattern LITERAL = Pattern.compile("\"(\\.?[A-Za-z][\\w.-]*)\"");

    private static final Pattern SAID = Pattern.compile("\\b(?:say|knows)\\(\\s*\"([\\w.-]+)\"\\s*[,)]");

    /** Said only of numbers that are never one: thresholds, rates, figures that need many landings. */
    private static final Set<String> NEVER_ONE = Set.of(
            "ingest.quality: rate.slow",
            "ingest.quality: turn.factor",
            "ingest.quality: unit.large",
            "ingest.quality: unit.small",
            "ingest.wire: lost",
            "ingest.table: nothing.for",
            "ingest.table: rows.bad",
            "ingest.table: time.still",
            "report.table: session.opening",
            "report.table: session.opening.both",
            "report.live: disk.short",
            "report.block: height.few",
            "report.html: method.recording",
            "report.html: tiring.rises",
            "report.html: tiring.falls",
            "report.html: tiring.moves",
            "report.html: tiring.more",
            "report.html: tiring.less",
            "report.sentence: landings.between",
            "report.window: sensor.slow",
            "report.window: sensor.rest",
            "report.window: sensor.moving",
            "report.window: owed.minutes.about",
            "report.form: standard.baseline",
            "report.table: block.height",
            "report.table: tiring",
            "report.table: science.heights",
            "report.table: science.needed.feet",
            "report.weeks: sore.landings",
            "report.weeks: sore.highest",
            "report.weeks: sore.effort",
            "report.weeks: flat");

    private static final TreeMap<Path, Properties> BUNDLES = new TreeMap<>();
    private static final TreeMap<Path, String> SOURCES = new TreeMap<>();

    @BeforeAll
    static void read() throws IOException {
        for (String module : MODULES) {
            Path main = Path.of("..", module, "src", "main");
            for (Path file : files(main.resolve("resources"), "words.properties")) {
                Properties words = new Properties();
                try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                    words.load(in);
                }
                BUNDLES.put(file, words);
            }
            for (String end : List.of(".java", ".jte")) {
                for (Path file : files(main, end)) {
                    SOURCES.put(file, Files.readString(file));
                }
            }
            assertThat(BUNDLES.keySet()).as(module).anyMatch(file -> module.equals(module(file)));
        }
        assertThat(BUNDLES).hasSizeGreaterThan(10);
        assertThat(SOURCES).hasSizeGreaterThan(300);
    }

    private static List<Path> files(Path root, String end) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> file.toString().endsWith(end)).toList();
        }
    }

    /** A quote too few swallows a gap, and one too many a letter. */
    @Test
    void everyGap_isFilled() {
        forEach((where, format) -> {
            Object[] gaps = new Object[10];
            for (int i = 0; i < gaps.length; i++) {
                gaps[i] = isNumber(format, i) ? Integer.valueOf(7000 + i) : "<" + i + ">";
            }
            String said = format.format(gaps).replace(",", "");
            assertThat(said).as(where).doesNotContain("{", "}", "''", "null").isNotBlank();
            Matcher gap = Pattern.compile("\\{(\\d)").matcher(format.toPattern());
            while (gap.find()) {
                int i = Integer.parseInt(gap.group(1));
                Format[] formats = format.getFormatsByArgumentIndex();
                // A gap within a choice is filled for some numbers only.
                if (i < formats.length && !(formats[i] instanceof ChoiceFormat)) {
                    assertThat(said).as(where).contains(isNumber(format, i) ? "700" + i : "<" + i + ">");
                }
            }
        });
    }

    @Test
    void oneIsNeverCalledSeveral_andNoneManyAndWhatIsMissingHaveWords() {
        List<String> wrong = new ArrayList<>();
        forEach((where, format) -> {
            for (int count : new int[] {0, 1, 2, 1000}) {
                Object[] gaps = new Object[10];
                for (int i = 0; i < gaps.length; i++) {
                    gaps[i] = isNumber(format, i) ? Integer.valueOf(count) : String.valueOf(count);
                }
                String said = format.format(gaps);
                assertThat(said).as(where).isNotBlank().doesNotContain("null", "NaN", "{", "}");
                if (!NEVER_ONE.contains(where) && SEVERAL.matcher(said).find()) {
                    wrong.add(where + ": " + said);
                }
            }
            Object[] missing = new Object[10];
            for (int i = 0; i < missing.length; i++) {
                missing[i] = isNumber(format, i) ? Integer.valueOf(0) : Figures.MISSING;
            }
            assertThat(format.format(missing)).as(where).isNotBlank().doesNotContain("null");
        });
        assertThat(String.join("\n", wrong)).isEmpty();
    }

    /** What is not said any more goes; what is put together of parts begins with a part that stands in the code. */
    @Test
    void everySentence_isSaidSomewhere() {
        Map<String, Set<String>> literals = new TreeMap<>();
        SOURCES.forEach((file, source) -> {
            Matcher literal = LITERAL.matcher(source);
            while (literal.find()) {
                literals.computeIfAbsent(module(file), module -> new TreeSet<>())
                        .add(literal.group(1));
            }
        });
        List<String> never = new ArrayList<>();
        BUNDLES.forEach((file, words) -> words.stringPropertyNames().stream()
                .filter(key -> !isSaid(key, literals.getOrDefault(module(file), Set.of())))
                .forEach(key -> never.add(where(file, key))));
        assertThat(String.join("\n", never)).isEmpty();
    }

    private static boolean isSaid(String key, Set<String> literals) {
        if (literals.contains(key)) {
            return true;
        }
        for (int dot = key.lastIndexOf('.'); dot > 0; dot = key.lastIndexOf('.', dot - 1)) {
            String head = key.substring(0, dot);
            // A head with a dot is followed by something; one without, by a literal that begins with the dot.
            if (literals.contains(head + ".") || literals.contains(head) || literals.contains(key.substring(dot))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everythingSaid_hasASentence() {
        Map<String, Set<String>> known = new TreeMap<>();
        BUNDLES.forEach((file, words) ->
                known.computeIfAbsent(module(file), module -> new TreeSet<>()).addAll(words.stringPropertyNames()));
        int looked = 0;
        List<String> none = new ArrayList<>();
        for (var source : SOURCES.entrySet()) {
            Matcher said = SAID.matcher(source.getValue());
            while (said.find()) {
                looked++;
                String key = said.group(1);
                if (!key.endsWith(".")
                        && !known.getOrDefault(module(source.getKey()), Set.of())
                                .contains(key)) {
                    none.add(source.getKey().getFileName() + ": " + key);
                }
            }
        }
        assertThat(none).isEmpty();
        assertThat(looked).isGreaterThan(300);
    }

    private interface Look {
        void at(String where, MessageFormat format);
    }

    private static void forEach(Look look) {
        BUNDLES.forEach((file, words) -> words.stringPropertyNames().stream()
                // Nothing is said on purpose where nothing stands: a control without a key, a step without a count.
                .filter(key -> !words.getProperty(key).isEmpty())
                .forEach(key -> look.at(
                        where(file, key), new MessageFormat(withoutJson(words.getProperty(key)), Locale.ENGLISH))));
    }

    /** The module a file is of, whose name stands behind the way up. */
    private static String module(Path file) {
        return file.getName(1).toString();
    }

    /** Such as {@code ingest.table: rows.bad}; two modules may have a package of the same last name. */
    private static String where(Path file, String key) {
        return module(file) + "." + file.getName(file.getNameCount() - 2) + ": " + key;
    }

    /** The JSON that a person is told to write holds braces and null on purpose. */
    private static String withoutJson(String pattern) {
        return pattern.replace("'{'", "(").replace("'}'", ")").replaceFirst("^null for", "none for");
    }

    private static boolean isNumber(MessageFormat format, int gap) {
        Format[] formats = format.getFormatsByArgumentIndex();
        return gap < formats.length && formats[gap] instanceof NumberFormat;
    }
}

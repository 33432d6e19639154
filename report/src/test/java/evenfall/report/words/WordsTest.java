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
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every sentence of every bundle, with none, one and many in its gaps, with what is missing, and whether it is ever said. */
class WordsTest {

    private static final Path MAIN = Path.of("src", "main");

    /** Something counted: a number and a word behind it that stands for several. */
    private static final Pattern SEVERAL = Pattern.compile(
            "(?<![\\d.,])1 (landings|sessions|weeks|days|steps|files|athletes|notes|minutes|seconds|times|regions|answers"
                    + "|entries|measures|places|gaps|samples|drops|bends)\\b");

    /** A literal, whole or up to a dot behind which something is put. */
    private static final Pattern LITERAL = Pattern.compile("\"(\\.?[A-Za-z][\\w.-]*)\"");

    private static final Pattern SAID = Pattern.compile("\\b(?:say|knows)\\(\\s*\"([\\w.-]+)\"\\s*[,)]");

    /** Said only of numbers that are never one: thresholds, rates, figures that need many landings. */
    private static final Set<String> NEVER_ONE = Set.of(
            "live: disk.short",
            "block: height.few",
            "html: method.recording",
            "html: tiring.rises",
            "html: tiring.falls",
            "html: tiring.moves",
            "html: tiring.more",
            "html: tiring.less",
            "sentence: landings.between",
            "window: sensor.slow",
            "window: sensor.rest",
            "window: sensor.moving",
            "window: owed.minutes.about",
            "form: standard.baseline",
            "table: block.height",
            "table: tiring",
            "table: science.heights",
            "table: science.needed.feet",
            "weeks: sore.landings",
            "weeks: sore.highest",
            "weeks: sore.effort",
            "weeks: flat");

    private static final TreeMap<Path, Properties> BUNDLES = new TreeMap<>();
    private static final TreeMap<Path, String> SOURCES = new TreeMap<>();

    @BeforeAll
    static void read() throws IOException {
        for (Path file : files(MAIN.resolve("resources"), "words.properties")) {
            Properties words = new Properties();
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                words.load(in);
            }
            BUNDLES.put(file, words);
        }
        for (Path file : files(MAIN, ".java")) {
            SOURCES.put(file, Files.readString(file));
        }
        for (Path file : files(MAIN, ".jte")) {
            SOURCES.put(file, Files.readString(file));
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
        Set<String> literals = new TreeSet<>();
        for (String source : SOURCES.values()) {
            Matcher literal = LITERAL.matcher(source);
            while (literal.find()) {
                literals.add(literal.group(1));
            }
        }
        List<String> never = new ArrayList<>();
        BUNDLES.forEach((file, words) -> words.stringPropertyNames().stream()
                .filter(key -> !isSaid(key, literals))
                .forEach(key -> never.add(file.getName(file.getNameCount() - 2) + ": " + key)));
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
        Set<String> known = new TreeSet<>();
        BUNDLES.values().forEach(words -> known.addAll(words.stringPropertyNames()));
        int looked = 0;
        List<String> none = new ArrayList<>();
        for (var source : SOURCES.entrySet()) {
            Matcher said = SAID.matcher(source.getValue());
            while (said.find()) {
                looked++;
                String key = said.group(1);
                if (!key.endsWith(".") && !known.contains(key)) {
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
                        file.getName(file.getNameCount() - 2) + ": " + key,
                        new MessageFormat(words.getProperty(key), Locale.ENGLISH))));
    }

    private static boolean isNumber(MessageFormat format, int gap) {
        Format[] formats = format.getFormatsByArgumentIndex();
        return gap < formats.length && formats[gap] instanceof NumberFormat;
    }
}

package evenfall.report.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sentences for people lie in bundles: a literal of three words or more in the code is a sentence that strayed. */
class SentencesInCodeTest {

    /** What is passed over, a literal, or what ends a statement. */
    private static final Pattern TOKEN = Pattern.compile(
            "(?s)/\\*.*?\\*/|//[^\\n]*|'(?:\\\\.|[^'\\\\])+'|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\])*\"|@\\w+\\s*\\(|[(){};]");

    private static final Pattern SENTENCE = Pattern.compile("[A-Za-z]{2,}[,;:]? [A-Za-z]+[,;:]? [A-Za-z]{2,}");

    /** Broken contracts, which only programmers see, and names of threads. */
    private static final Pattern FOR_PROGRAMMERS = Pattern.compile(
            "IllegalArgumentException|UnsupportedOperationException|IllegalStateException|AssertionError|requireNonNull|Aside\\.start");

    /** Where in a grid of a window something stands. */
    private static final Pattern PLACEMENT = Pattern.compile(
            "(?:(?:span|growx?|growy|pushx|wrap|newline|skip|split|top|flowy|[hw]m(?:in|ax))(?: \\d+)?(?:, |$))+");

    private static final Set<String> ALLOWED = Set.of(
            // What systems say of a full disk, looked for in their messages.
            "DiskRoom.java: no space left",
            "DiskRoom.java: not enough space",
            "DiskRoom.java: disk is full",
            // Codes in results, read by other programs.
            "ClockFinder.java: shared motion away from landings",
            "ClockFinder.java: shared motion, landings included",
            "Sides.java: no clear difference",
            "Trend.java: no clear change",
            "BothFeetAnalysis.java: to the left",
            "BothFeetAnalysis.java: to the right",
            // Descriptions of options, as constants that annotations name.
            "SideOption.java: left, right, both",
            "FilterOption.java: two-pass (the default; may look ahead), live, madgwick or complementary.",
            // The form of a date.
            "KeptPage.java: d MMMM uuuu, HH:mm",
            // A mark in a file that is compared as a whole.
            "StoredTraces.java:  bytes with the CRC-32 ",
            // What the reader of the command line says, looked for in its messages.
            "Sentences.java: is not a double$",
            "Sentences.java: is not an (?:int|long)$",
            // Ends of programs and damage of the program itself, caught above and said in other words.
            "OutputClosedException.java: nobody reads standard output any more",
            "CsvSplitter.java: closing a reader of text in memory",
            "JsonTree.java: a value should stand here",
            "Typeface.java: the bundled font ",
            // A port that is played, and says what a plugged one's system would.
            "RehearsalBench.java:  is not there: a rehearsal has one port, '",
            "RehearsalBench.java: ', while it is plugged in.",
            "RehearsalBench.java:  is not there any more; nothing was written.");

    @Test
    void noSentence_standsInTheCode() throws IOException {
        List<String> found = new ArrayList<>();
        Set<String> unused = new TreeSet<>(ALLOWED);
        int files = 0;
        for (String module : List.of("ingest", "fusion", "report")) {
            try (Stream<Path> all = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path file :
                        all.filter(path -> path.toString().endsWith(".java")).toList()) {
                    files++;
                    for (String sentence : sentences(Files.readString(file))) {
                        String where = file.getFileName() + ": " + sentence;
                        unused.remove(where);
                        if (!ALLOWED.contains(where)) {
                            found.add(where);
                        }
                    }
                }
            }
        }
        assertThat(String.join("\n", found)).as("move it into words.properties").isEmpty();
        assertThat(unused).as("allowed, but not there any more").isEmpty();
        assertThat(files).isGreaterThan(400);
    }

    @Test
    void aSentence_isFound_andWhatIsNoneIsNot() {
        assertThat(sentences("out.append(\"The diary is empty.\\n\");")).hasSize(1);
        assertThat(sentences("return \"fall: check the athlete\";")).hasSize(1);
        assertThat(sentences("@Command(name = \"a\")\nclass A { String s = \"one two three\"; }"))
                .containsExactly("one two three");
        assertThat(sentences("throw new UnusableInputException(\"The file is empty.\");"))
                .hasSize(1);
        assertThat(sentences("char c = '\"'; say(\"one two three\");")).hasSize(1);

        assertThat(sentences("throw new IllegalArgumentException(\"a rate must be positive\");"))
                .isEmpty();
        assertThat(sentences("@Command(description = {\"Finds the landings.\", \"All of them there.\"}) class A {}"))
                .isEmpty();
        assertThat(sentences("// says \"one two three\"\n/* \"one two three\" */ int a;"))
                .isEmpty();
        assertThat(sentences("panel.add(box, \"span, growx, wrap\");")).isEmpty();
        assertThat(sentences("WORDS.say(\"left.out.more\");")).isEmpty();
    }

    private static List<String> sentences(String source) {
        List<String> sentences = new ArrayList<>();
        Matcher token = TOKEN.matcher(source);
        int statement = 0;
        // Brackets that are open within an annotation.
        int annotation = 0;
        while (token.find()) {
            String text = token.group();
            if (text.startsWith("@")) {
                annotation++;
            } else if (annotation > 0 && (text.equals("(") || text.equals(")"))) {
                annotation += text.equals("(") ? 1 : -1;
            } else if (text.equals(";") || text.equals("{") || text.equals("}")) {
                statement = token.end();
            } else if (text.startsWith("\"") && annotation == 0) {
                String literal = text.replaceAll("^\"+|\"+$", "");
                if (SENTENCE.matcher(literal).find()
                        && !PLACEMENT.matcher(literal).matches()
                        && !FOR_PROGRAMMERS
                                .matcher(source.substring(statement, token.start()))
                                .find()) {
                    sentences.add(literal);
                }
            }
        }
        return sentences;
    }
}

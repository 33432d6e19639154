package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.Needed;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureKind;
import evenfall.report.measure.MeasureList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What a scientist may ask of a block beside what a coach is shown. */
@Command(addMethodSubcommands = false)
final class ScienceOptions {

    private static final Words WORDS = Words.beside(ScienceOptions.class);

    private static final Pattern STATED = Pattern.compile("([^=]+)=(\\d{1,9}(?:\\.\\d{1,9})?)");

    @Option(names = "--science")
    private boolean table;

    @Option(names = "--difference", paramLabel = "MEASURE=VALUE")
    private List<String> stated = List.of();

    /** Whether the scientist's table is to be printed. */
    boolean table() {
        return table || !stated.isEmpty();
    }

    /**
     * The differences that were stated, by measure.
     *
     * @throws UsageException if one cannot be read, or the format has no place for them
     */
    Map<String, Double> differences(OutputFormat written) {
        if (table() && written != OutputFormat.TABLE && written != OutputFormat.JSON) {
            throw new UsageException(WORDS.say("science.format"));
        }
        Map<String, Double> differences = new LinkedHashMap<>();
        for (String text : stated) {
            Matcher matcher = STATED.matcher(text);
            if (!matcher.matches() || !(Double.parseDouble(matcher.group(2)) > 0)) {
                throw new UsageException(WORDS.say("science.difference", text));
            }
            differences.put(compared(matcher.group(1)), Double.valueOf(matcher.group(2)));
        }
        return differences;
    }

    private static String compared(String name) {
        List<String> known = MeasureList.all().stream()
                .filter(measure -> measure.kind() == MeasureKind.COMPARED)
                .map(Measure::name)
                .toList();
        return MeasureList.named(name)
                .map(Measure::name)
                .filter(known::contains)
                .orElseThrow(() -> new UsageException(WORDS.say("science.measure", name, String.join(", ", known))));
    }

    /** What they need in a block. */
    static List<Needed> needed(Block block, Map<String, Double> differences) {
        return differences.entrySet().stream()
                .map(each -> Needed.of(block, each.getKey(), each.getValue()))
                .toList();
    }
}

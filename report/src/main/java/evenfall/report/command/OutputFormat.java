package evenfall.report.command;

import evenfall.ingest.words.Words;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The forms a result can take. */
enum OutputFormat {
    TABLE,
    CSV,
    SPREADSHEET,
    SPREADSHEET_COMMA,
    JSON,
    HTML,
    PDF,
    VTT,
    MOTION_BIDS;

    private static final Words WORDS = Words.beside(OutputFormat.class);

    /** The name on the command line. */
    String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * This format, if it is among those a command writes.
     *
     * @throws UsageException if not
     */
    OutputFormat among(Set<OutputFormat> written) {
        if (!written.contains(this)) {
            throw new UsageException(WORDS.say(
                    "format.elsewhere",
                    code(),
                    written.stream().sorted().map(OutputFormat::code).collect(Collectors.joining(", "))));
        }
        return this;
    }

    /** Reads the name of a format. */
    static final class Converter implements ITypeConverter<OutputFormat> {

        @Override
        public OutputFormat convert(String text) {
            return Arrays.stream(values())
                    .filter(format -> format.code().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(WORDS.say(
                            "none.of",
                            text,
                            Arrays.stream(values()).map(OutputFormat::code).collect(Collectors.joining(", ")))));
        }
    }
}

package evenfall.report.command;

import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.words.Words;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a filter. */
final class FilterOption implements ITypeConverter<FilterKind> {

    private static final Words WORDS = Words.beside(FilterOption.class);

    static final String DESCRIPTION = "two-pass (the default; may look ahead), live, madgwick or complementary.";

    @Override
    public FilterKind convert(String text) {
        return Arrays.stream(FilterKind.values())
                .filter(kind -> kind.code().equals(text))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(WORDS.say(
                        "none.of",
                        text,
                        Arrays.stream(FilterKind.values()).map(FilterKind::code).collect(Collectors.joining(", ")))));
    }
}

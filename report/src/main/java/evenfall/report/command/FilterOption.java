package evenfall.report.command;

import evenfall.fusion.orientation.FilterKind;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a filter. */
final class FilterOption implements ITypeConverter<FilterKind> {

    static final String DESCRIPTION = "two-pass (the default; may look ahead), live, madgwick or complementary.";

    @Override
    public FilterKind convert(String text) {
        return Arrays.stream(FilterKind.values())
                .filter(kind -> kind.code().equals(text))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException("'" + text + "' is none of "
                        + Arrays.stream(FilterKind.values())
                                .map(FilterKind::code)
                                .collect(Collectors.joining(", "))));
    }
}

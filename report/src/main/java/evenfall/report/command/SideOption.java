package evenfall.report.command;

import evenfall.fusion.landing.Side;
import evenfall.report.log.NotesTable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the foot or feet landed on. */
final class SideOption implements ITypeConverter<Side> {

    @Override
    public Side convert(String text) {
        return NotesTable.side(text)
                .orElseThrow(() -> new TypeConversionException("'" + text + "' is none of left, right, both"));
    }
}

package evenfall.report.command;

import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.log.NotesTable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the foot or feet landed on. */
final class SideOption implements ITypeConverter<Side> {

    private static final Words WORDS = Words.beside(SideOption.class);

    @Override
    public Side convert(String text) {
        return NotesTable.side(text)
                .orElseThrow(() -> new TypeConversionException(WORDS.say("none.of", text, "left, right, both")));
    }
}

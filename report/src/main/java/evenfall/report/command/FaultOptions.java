package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.rehearsal.Faults;
import evenfall.report.rehearsal.Stretch;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What is to go wrong in a rehearsal. */
final class FaultOptions {

    private static final Words WORDS = Words.beside(FaultOptions.class);

    @Option(names = "--lose", paramLabel = "PERCENT", converter = Share.class)
    private double lose;

    @Option(names = "--damage", paramLabel = "PERCENT", converter = Share.class)
    private double damage;

    @Option(names = "--silent", paramLabel = "FROM..TO", converter = OfStretch.class)
    private List<Stretch> silent = new ArrayList<>();

    @Option(names = "--unplug", paramLabel = "FROM..TO", converter = OfStretch.class)
    private List<Stretch> unplug = new ArrayList<>();

    @Option(names = "--seed", paramLabel = "N")
    private long seed;

    Faults faults() {
        return new Faults(lose, damage, silent, unplug, seed);
    }

    /** A share of 1 from {@code 1%} or {@code 1}, both of them a hundredth. */
    static final class Share implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            String digits = text.endsWith("%") ? text.substring(0, text.length() - 1) : text;
            double percent;
            try {
                percent = Double.parseDouble(digits);
            } catch (NumberFormatException e) {
                percent = Double.NaN;
            }
            if (!(percent >= 0 && percent <= 100)) {
                throw new TypeConversionException(WORDS.say("fault.share", text));
            }
            return percent / 100;
        }
    }

    /** A stretch from {@code 20..25}. */
    static final class OfStretch implements ITypeConverter<Stretch> {

        @Override
        public Stretch convert(String text) {
            int dots = text.indexOf("..");
            try {
                if (dots > 0) {
                    return new Stretch(
                            Double.parseDouble(text.substring(0, dots)), Double.parseDouble(text.substring(dots + 2)));
                }
            } catch (IllegalArgumentException e) {
                // Answered below, as what has no dots.
            }
            throw new TypeConversionException(WORDS.say("fault.stretch", text));
        }
    }
}

package evenfall.report.glossary;

import evenfall.ingest.words.Words;
import java.util.Arrays;
import java.util.List;

/** Short explanations of everything pages show a figure of. */
public final class Glossary {

    private static final Words WORDS = Words.beside(Glossary.class);

    private Glossary() {}

    /**
     * One explanation.
     *
     * @param name what pages call it
     * @param what what it is, in a sentence
     * @param how how it is measured
     * @param usual what is usual, and where that is known from
     * @param not what it cannot say
     */
    public record Entry(Term term, String name, String what, String how, String usual, String not) {}

    /** What pages call it. */
    public static String name(Term term) {
        return WORDS.say(term.code() + ".name");
    }

    /** The explanation. */
    public static Entry of(Term term) {
        String code = term.code();
        return new Entry(
                term,
                name(term),
                WORDS.say(code + ".what"),
                WORDS.say(code + ".how"),
                WORDS.say(code + ".usual"),
                WORDS.say(code + ".not"));
    }

    /** All explanations. */
    public static List<Entry> all() {
        return Arrays.stream(Term.values()).map(Glossary::of).toList();
    }
}

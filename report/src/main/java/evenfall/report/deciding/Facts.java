package evenfall.report.deciding;

import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Gathers sentences, each with the ways on it speaks for and those it speaks against. */
final class Facts {

    private static final Words WORDS = Words.beside(Facts.class);

    private final Map<Choice, List<String>> speaksFor = new EnumMap<>(Choice.class);
    private final Map<Choice, String> named = new EnumMap<>(Choice.class);
    private final Map<Choice, List<String>> speaksAgainst = new EnumMap<>(Choice.class);

    /** Says a fact of the bundle. */
    Side say(String key, Object... gaps) {
        return fact(WORDS.say(key, gaps));
    }

    /** A fact in a sentence of its own. */
    Side fact(String sentence) {
        return new Side(sentence);
    }

    /** Says a way on in other words than the usual. */
    void name(Choice choice, String key, Object... gaps) {
        named.put(choice, WORDS.say(key, gaps));
    }

    /** All ways on with their reasons. */
    List<Option> options() {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Choice.values()) {
            options.add(new Option(
                    choice,
                    named.getOrDefault(choice, WORDS.say("choice." + choice.code())),
                    speaksFor.getOrDefault(choice, List.of()),
                    speaksAgainst.getOrDefault(choice, List.of())));
        }
        return options;
    }

    /** What a fact speaks for and against. */
    final class Side {

        private final String sentence;

        private Side(String sentence) {
            this.sentence = sentence;
        }

        Side speaksFor(Choice... choices) {
            for (Choice choice : choices) {
                speaksFor.computeIfAbsent(choice, key -> new ArrayList<>()).add(sentence);
            }
            return this;
        }

        Side against(Choice... choices) {
            for (Choice choice : choices) {
                speaksAgainst.computeIfAbsent(choice, key -> new ArrayList<>()).add(sentence);
            }
            return this;
        }
    }
}

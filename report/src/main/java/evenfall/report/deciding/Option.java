package evenfall.report.deciding;

import java.util.List;

/**
 * One way on with what speaks for it and against it, in sentences.
 *
 * @param choice which
 * @param words what it means, in words
 * @param reasonsFor what speaks for it
 * @param reasonsAgainst what speaks against it
 */
public record Option(Choice choice, String words, List<String> reasonsFor, List<String> reasonsAgainst) {

    public Option {
        reasonsFor = List.copyOf(reasonsFor);
        reasonsAgainst = List.copyOf(reasonsAgainst);
    }
}

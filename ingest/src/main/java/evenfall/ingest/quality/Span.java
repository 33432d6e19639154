package evenfall.ingest.quality;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of samples.
 *
 * @param from its first index
 * @param to its last index
 */
record Span(int from, int to) {

    int length() {
        return to - from + 1;
    }

    /** What two lists of spans, each in order and without overlap, have in common. */
    static List<Span> common(List<Span> some, List<Span> others) {
        List<Span> shared = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < some.size() && j < others.size()) {
            Span a = some.get(i);
            Span b = others.get(j);
            int from = Math.max(a.from, b.from);
            int to = Math.min(a.to, b.to);
            if (from <= to) {
                shared.add(new Span(from, to));
            }
            if (a.to < b.to) {
                i++;
            } else {
                j++;
            }
        }
        return shared;
    }

    /** Those of {@code spans} of which {@code covers} takes less than half. */
    static List<Span> without(List<Span> spans, List<Span> covers) {
        return spans.stream()
                .filter(span -> 2
                                * common(List.of(span), covers).stream()
                                        .mapToInt(Span::length)
                                        .sum()
                        < span.length())
                .toList();
    }
}

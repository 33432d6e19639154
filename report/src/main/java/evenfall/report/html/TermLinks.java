package evenfall.report.html;

import evenfall.report.glossary.Glossary;
import evenfall.report.html.view.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds the names of measures in sentences, so that each leads to its explanation. */
final class TermLinks {

    private static final Map<String, String> CODES = codes();

    /** Any name as a whole word; a longer name goes before one that it begins with. */
    private static final Pattern NAMES = Pattern.compile(
            CODES.keySet().stream()
                    .sorted(Comparator.comparing(String::length).reversed())
                    .map(Pattern::quote)
                    .collect(Collectors.joining("|", "(?<!\\p{L})(?:", ")(?!\\p{L})")),
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private TermLinks() {}

    /** The sentence in parts, in order. */
    static List<Span> in(String sentence) {
        List<Span> spans = new ArrayList<>();
        Matcher name = NAMES.matcher(sentence);
        int at = 0;
        while (name.find()) {
            if (name.start() > at) {
                spans.add(new Span(sentence.substring(at, name.start()), ""));
            }
            spans.add(new Span(name.group(), CODES.getOrDefault(key(name.group()), "")));
            at = name.end();
        }
        if (at < sentence.length()) {
            spans.add(new Span(sentence.substring(at), ""));
        }
        return spans;
    }

    private static Map<String, String> codes() {
        Map<String, String> codes = new LinkedHashMap<>();
        for (Glossary.Entry entry : Glossary.all()) {
            codes.put(key(entry.name()), entry.term().code());
        }
        return codes;
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}

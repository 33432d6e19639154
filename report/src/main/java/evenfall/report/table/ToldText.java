package evenfall.report.table;

import evenfall.fusion.landing.Landing;
import evenfall.ingest.words.Words;
import evenfall.report.live.ToldComparison;
import evenfall.report.live.ToldDifference;
import evenfall.report.measure.Measure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was told live and is otherwise by the analysis of the whole, in sentences: one a landing. */
public final class ToldText {

    /** So many measures of a landing are named. */
    private static final int NAMED = 3;

    private static final Words WORDS = Words.beside(ToldText.class);

    private ToldText() {}

    /** The sentences, in order of landings; none if all is as it was told. */
    public static List<String> sentences(ToldComparison comparison) {
        Map<Integer, List<String>> parts = new LinkedHashMap<>();
        for (ToldDifference difference : comparison.differences()) {
            Measure measure = difference.measure();
            String told = MeasureWords.value(measure.name(), measure.unit(), difference.told());
            String is = MeasureWords.value(measure.name(), measure.unit(), difference.is());
            List<String> named = parts.computeIfAbsent(difference.landing(), k -> new ArrayList<>());
            // What reads the same is no news.
            if (!told.equals(is) && named.size() < NAMED) {
                named.add(WORDS.say("told.measure", MeasureWords.label(measure.name()), told, is));
            }
        }
        List<String> sentences = new ArrayList<>();
        parts.forEach((landing, named) -> {
            if (!named.isEmpty()) {
                sentences.add(WORDS.say("told.landing", Integer.toString(landing), String.join("; ", named)));
            }
        });
        for (Landing landing : comparison.gone()) {
            sentences.add(
                    WORDS.say("told.gone", SessionText.clock(landing.moments().contactS())));
        }
        for (Landing landing : comparison.untold()) {
            sentences.add(WORDS.say(
                    "told.untold",
                    Integer.toString(landing.index()),
                    SessionText.clock(landing.moments().contactS())));
        }
        return sentences;
    }
}

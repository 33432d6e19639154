package evenfall.report.sentence;

import evenfall.fusion.landing.Measures;
import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * What gave way most in a session, and from which height: of everything that passed a limit at least twice, the one
 * that goes together most closely with being above some height, else the most frequent one.
 */
final class GivingWay {

    private static final int FEWEST = 2;
    private static final double STEP_M = 0.1;
    private static final double MOST_ABOVE = 0.5;
    private static final double CONTRAST = 0.5;

    private GivingWay() {}

    /** What gave way most, and what else took part in at least two landings that were lost; empty where nothing did. */
    static List<String> words(Words words, List<SessionLanding> landings) {
        Map<String, List<SessionLanding>> byWhat = new TreeMap<>();
        for (SessionLanding event : landings) {
            for (String what : new TreeSet<>(gaveIn(words, event))) {
                byWhat.computeIfAbsent(what, key -> new ArrayList<>()).add(event);
            }
        }
        byWhat.values().removeIf(events -> events.size() < FEWEST);
        Above best = null;
        for (Map.Entry<String, List<SessionLanding>> entry : byWhat.entrySet()) {
            for (double height : steps(landings)) {
                Above above = new Above(entry.getKey(), entry.getValue(), landings, height);
                if (above.standsOut() && (best == null || above.contrast() > best.contrast() + 1e-9)) {
                    best = above;
                }
            }
        }
        List<String> sentences = new ArrayList<>();
        if (best != null) {
            sentences.add(best.words(words));
            byWhat.remove(best.what);
        } else {
            byWhat.entrySet().stream()
                    .max(Comparator.comparingInt(entry -> entry.getValue().size()))
                    .ifPresent(most -> {
                        sentences.add(
                                often(words, most.getKey(), most.getValue().size(), landings.size()));
                        byWhat.remove(most.getKey());
                    });
        }
        byWhat.entrySet().stream()
                .filter(entry -> lost(entry.getValue()) >= FEWEST)
                .max(Comparator.comparingLong(entry -> lost(entry.getValue())))
                .ifPresent(second -> sentences.add(
                        often(words, second.getKey(), second.getValue().size(), landings.size())));
        return sentences;
    }

    private static long lost(List<SessionLanding> landings) {
        return landings.stream().filter(event -> event.form() == Form.LOST).count();
    }

    private static String often(Words words, String what, int times, int of) {
        String clause = words.say(what);
        String opening = clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1);
        return times == of ? words.say("gave.often.all", opening, times) : words.say("gave.often", opening, times, of);
    }

    /** Keys of the words for each limit this landing passed, the side of sided measures included. */
    private static List<String> gaveIn(Words words, SessionLanding event) {
        FormVerdict verdict = event.verdict();
        Measures measures = event.landing().measures();
        if (verdict == null || measures == null) {
            return List.of();
        }
        return verdict.reasons().stream()
                .filter(Reason::over)
                .map(reason -> key(words, reason.measure(), measures))
                .filter(words::knows)
                .toList();
    }

    private static String key(Words words, String measure, Measures measures) {
        String plain = "gave." + measure;
        if (words.knows(plain)) {
            return plain;
        }
        Double value =
                MeasureList.named(measure).map(found -> found.of(measures)).orElse(null);
        return plain + (value != null && value < 0 ? ".minus" : ".plus");
    }

    /** Tenths of a metre between the lowest and the highest landing. */
    private static double[] steps(List<SessionLanding> landings) {
        double[] heights = landings.stream()
                .map(SessionLanding::heightM)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        if (heights.length == 0) {
            return heights;
        }
        long first = (long) Math.ceil(heights[0] / STEP_M - 1e-9);
        long last = (long) Math.floor(heights[heights.length - 1] / STEP_M - 1e-9);
        return LongStream.rangeClosed(first, last)
                .mapToDouble(step -> step * STEP_M)
                .toArray();
    }

    /** How often something gave way above a height and up to it. */
    private static final class Above {

        private final String what;
        private final double height;
        private int gaveAbove;
        private int above;
        private int gaveBelow;
        private int below;
        private double highestBelow;

        Above(String what, List<SessionLanding> gave, List<SessionLanding> all, double height) {
            this.what = what;
            this.height = height;
            // By place in the session: a landing's signals take long to compare.
            Set<Integer> places =
                    gave.stream().map(event -> event.landing().index()).collect(Collectors.toSet());
            for (SessionLanding event : all) {
                Double from = event.heightM();
                if (from == null) {
                    continue;
                }
                boolean gaveWay = places.contains(event.landing().index());
                if (from > height + 1e-9) {
                    above++;
                    gaveAbove += gaveWay ? 1 : 0;
                } else {
                    below++;
                    gaveBelow += gaveWay ? 1 : 0;
                    highestBelow = gaveWay ? Math.max(highestBelow, from) : highestBelow;
                }
            }
        }

        boolean standsOut() {
            return gaveAbove >= FEWEST && below > 0 && share() >= MOST_ABOVE && contrast() >= CONTRAST;
        }

        /** The phi coefficient of "gave way" and "above the height", -1..1 (Yule 1912, J. R. Stat. Soc. 75(6), 579-652). */
        double contrast() {
            double heldAbove = above - gaveAbove;
            double heldBelow = below - gaveBelow;
            double margins = (double) above * below * (gaveAbove + gaveBelow) * (heldAbove + heldBelow);
            return margins > 0 ? (gaveAbove * heldBelow - gaveBelow * heldAbove) / Math.sqrt(margins) : 0;
        }

        String words(Words words) {
            String from = Figures.height(height);
            String lower = gaveBelow == 0
                    ? ""
                    : words.say("gave.lower", gaveBelow, Figures.height(Math.round(100 * highestBelow) / 100.0));
            return gaveAbove == above
                    ? words.say("gave.above", from, words.say(what), above, lower)
                    : words.say("gave.above.some", from, words.say(what), gaveAbove, above, lower);
        }

        private double share() {
            return above == 0 ? 0 : (double) gaveAbove / above;
        }
    }
}

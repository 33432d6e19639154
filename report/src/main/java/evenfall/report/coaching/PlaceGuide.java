package evenfall.report.coaching;

import evenfall.ingest.place.Place;
import evenfall.ingest.wire.TapWatch;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Asks where sensors are worn that do not say it, by taps. Not safe for use from several threads. */
public final class PlaceGuide {

    /** A sensor's hello may come a second after its first samples, s. */
    private static final double HELLO_S = 1.5;

    /** The other sensor may be switched on so much later, s. */
    private static final double ALONE_S = 15;

    private static final Words WORDS = Words.beside(PlaceGuide.class);

    private double sinceS = Double.NaN;
    private int asked;
    private TapWatch.Verdict told = TapWatch.Verdict.NONE;

    /**
     * What follows from what came so far.
     *
     * @param said what to say
     * @param places where sensors are worn, to be told to whoever records
     */
    public record Step(List<Utterance> said, Map<Integer, Place> places) {

        static final Step NOTHING = new Step(List.of(), Map.of());

        public Step {
            said = List.copyOf(said);
        }
    }

    /**
     * Looks at what came so far.
     *
     * @param nowS time since the recording began, s
     * @param unplaced sensors of unknown place
     * @param taken places that are known already
     * @param answer what taps say
     */
    public Step look(double nowS, List<Integer> unplaced, Set<Place> taken, TapWatch.Answer answer) {
        if (unplaced.isEmpty() || taken.size() == Place.values().length) {
            sinceS = Double.NaN;
            asked = 0;
            return Step.NOTHING;
        }
        sinceS = Double.isNaN(sinceS) ? nowS : sinceS;
        double waited = nowS - sinceS;
        int first = unplaced.get(0);
        if (unplaced.size() == 1) {
            return alone(first, waited, taken);
        }
        if (waited < HELLO_S) {
            return Step.NOTHING;
        }
        return tapped(unplaced, taken, answer);
    }

    private static Step alone(int sensor, double waited, Set<Place> taken) {
        if (!taken.isEmpty() && waited >= HELLO_S) {
            Place rest = taken.contains(Place.PELVIS) ? Place.UPPER_BACK : Place.PELVIS;
            return new Step(
                    List.of(Utterance.written(
                            WORDS.say("place.rest", name(sensor), WORDS.say("place." + rest.code())))),
                    Map.of(sensor, rest));
        }
        if (taken.isEmpty() && waited >= ALONE_S) {
            return new Step(
                    List.of(Utterance.written(WORDS.say("place.one", name(sensor)))), Map.of(sensor, Place.PELVIS));
        }
        return Step.NOTHING;
    }

    private Step tapped(List<Integer> unplaced, Set<Place> taken, TapWatch.Answer answer) {
        List<Utterance> said = new ArrayList<>();
        if (asked != unplaced.size()) {
            asked = unplaced.size();
            said.add(Utterance.said(WORDS.say("place.ask")));
            said.add(Utterance.written(WORDS.say(
                    "place.numbers",
                    unplaced.stream().map(PlaceGuide::name).collect(Collectors.joining(", ")),
                    name(unplaced.get(0)))));
        }
        boolean isNew = answer.verdict() != told;
        told = answer.verdict();
        if (isNew && told == TapWatch.Verdict.OTHERS_MOVED) {
            said.add(Utterance.said(WORDS.say("place.moved")));
        }
        if (isNew && told == TapWatch.Verdict.OTHERS_SILENT) {
            said.add(Utterance.said(WORDS.say("place.silent")));
        }
        Map<Integer, Place> places = new LinkedHashMap<>();
        if (told == TapWatch.Verdict.TAPPED && unplaced.contains(answer.sensor())) {
            places.put(answer.sensor(), Place.PELVIS);
            int other = unplaced.stream()
                    .filter(sensor -> sensor != answer.sensor())
                    .findFirst()
                    .orElse(-1);
            boolean both = unplaced.size() == 2 && !taken.contains(Place.UPPER_BACK);
            if (both) {
                places.put(other, Place.UPPER_BACK);
            }
            said.add(Utterance.said(WORDS.say("place.done", name(answer.sensor()), both ? 1 : 0, name(other))));
        }
        return new Step(said, places);
    }

    /** A sensor's number as files and lines name it. */
    static String name(int sensor) {
        return String.format(Locale.ROOT, "%04X", sensor & 0xFFFF);
    }
}

package evenfall.report.coaching;

import evenfall.fusion.analysis.OpeningState;
import evenfall.ingest.place.Place;
import evenfall.ingest.words.Words;
import java.util.Map;
import java.util.Optional;

/**
 * Leads through the opening routine: what to do now, what was seen, what to do again. Says a sentence only when it is another
 * than the last. Not safe for use from several threads.
 */
public final class RoutineGuide {

    /** A quiet stance at the beginning and between parts, s, as docs/strapping.md asks for. */
    private static final int STAND_S = 5;

    private static final double STAND_BETWEEN_S = 2;

    /** Two bends and two heel drops are asked for. */
    private static final int ASKED = 2;

    /** Whoever walks about stops for a moment now and then: the seconds are told from here on. */
    private static final int COUNTED_FROM_S = 2;

    /** After so long without what was asked for it is asked for in other words, s. */
    private static final double ASK_AGAIN_S = 15;

    /** What one sensor has seen the other may still find, and clocks are tied anew so often, s. */
    private static final double LATER_S = 3;

    /** Two heel drops are up to 3 s apart, and either may be seen a second late. */
    private static final double SECOND_DROP_S = 4;

    private static final double CLOCKS_LATER_S = 12;

    /** Clocks that agree less well than this are worth two more heel drops, ms: common practice, no source. */
    private static final double LOOSE_MS = 5;

    private static final Words WORDS = Words.beside(RoutineGuide.class);

    private String last = "";
    private String step = "";
    private double stepS;
    private boolean counted;
    private boolean stood;
    private boolean stoodAfterBends;
    private boolean done;

    /** What is to be said now, if anything. */
    public Optional<Utterance> look(OpeningState state, double nowS) {
        if (done) {
            return Optional.empty();
        }
        String sentence = state.over() ? over(state) : sentence(state, nowS);
        if (sentence.isEmpty() || sentence.equals(last)) {
            return Optional.empty();
        }
        last = sentence;
        return Optional.of(
                step.equals("stand") && state.standingS() >= COUNTED_FROM_S
                        ? Utterance.written(sentence)
                        : Utterance.said(sentence));
    }

    /** Whether it is over, well done or not. */
    public boolean isOver() {
        return done;
    }

    private String sentence(OpeningState state, double nowS) {
        int fewest = fewest(state.bends());
        int most = state.bends().values().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
        int still = (int) Math.min(state.standingS(), STAND_S);
        stood |= still == STAND_S || most > 0;
        if (!stood) {
            at("stand", nowS);
            if (still >= COUNTED_FROM_S) {
                counted = true;
                return WORDS.say("routine.still", STAND_S - still);
            }
            return WORDS.say(counted ? "routine.stand.again" : "routine.stand");
        }
        boolean dropped = state.heelDrops() > 0 && fewest > 0;
        if (most == 0) {
            return WORDS.say(at("bend", nowS) < ASK_AGAIN_S ? "routine.bend" : "routine.bend.again");
        }
        if (fewest == 0) {
            return at("bend one", nowS) < LATER_S ? "" : bentOnce(state.bends());
        }
        if (fewest < ASKED && !dropped) {
            double waited = at("bend more", nowS);
            if (waited < ASK_AGAIN_S) {
                return waited < LATER_S ? "" : WORDS.say("routine.bend.more");
            }
        }
        return state.bends().containsKey(Place.UPPER_BACK) ? drops(state, nowS) : ready("routine.done.alone", state);
    }

    private String drops(OpeningState state, double nowS) {
        int drops = state.heelDrops();
        stoodAfterBends |= state.standingS() >= STAND_BETWEEN_S || drops > 0;
        if (!stoodAfterBends) {
            at("still", nowS);
            return WORDS.say("routine.drop.still");
        }
        if (drops == 0) {
            return WORDS.say(at("drop", nowS) < ASK_AGAIN_S ? "routine.drop" : "routine.drop.again");
        }
        if (drops < ASKED) {
            return at("drop more", nowS) < SECOND_DROP_S ? "" : WORDS.say("routine.drop.more");
        }
        double waited = at("clocks", nowS);
        Double sigmaMs = state.clockSigmaMs();
        if (sigmaMs != null && sigmaMs <= LOOSE_MS) {
            return ready("routine.done", state);
        }
        if (waited < CLOCKS_LATER_S) {
            return "";
        }
        return sigmaMs == null
                ? WORDS.say("routine.clock.open", drops)
                : WORDS.say("routine.clock.loose", drops, whole(sigmaMs));
    }

    private String ready(String key, OpeningState state) {
        done = true;
        Double sigmaMs = state.clockSigmaMs();
        return WORDS.say(key, fewest(state.bends()), state.heelDrops(), sigmaMs == null ? "" : whole(sigmaMs));
    }

    /** What a first landing before the end of the routine costs; one thing, the worst. */
    private String over(OpeningState state) {
        done = true;
        if (fewest(state.bends()) == 0) {
            return WORDS.say("routine.missed.bend");
        }
        Double sigmaMs = state.clockSigmaMs();
        if (state.bends().containsKey(Place.UPPER_BACK) && (sigmaMs == null || sigmaMs > LOOSE_MS)) {
            return WORDS.say("routine.missed.clock");
        }
        return stood ? "" : WORDS.say("routine.missed.stand");
    }

    private static String bentOnce(Map<Place, Integer> bends) {
        Place seen = bends.getOrDefault(Place.PELVIS, 0) > 0 ? Place.PELVIS : Place.UPPER_BACK;
        Place not = seen == Place.PELVIS ? Place.UPPER_BACK : Place.PELVIS;
        return WORDS.say("routine.bend.one", seen.code(), not.code());
    }

    private static int fewest(Map<Place, Integer> bends) {
        return bends.values().stream().mapToInt(Integer::intValue).min().orElse(0);
    }

    /** How long this step has lasted, s. */
    private double at(String name, double nowS) {
        if (!name.equals(step)) {
            step = name;
            stepS = nowS;
        }
        return nowS - stepS;
    }

    private static String whole(double milliseconds) {
        return String.valueOf(Math.max(1, (long) Math.ceil(milliseconds)));
    }
}

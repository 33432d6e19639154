package evenfall.report.turn;

import evenfall.fusion.analysis.OpeningState;
import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.PlaceGuide;
import evenfall.report.coaching.RoutineGuide;
import evenfall.report.coaching.Talk;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.coaching.Utterance;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.speech.Speech;
import evenfall.report.turn.Onlooker.Topic;
import java.io.IOException;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Says, through one turn, what the coach and the athlete should hear: to whoever looks on, and aloud where that is wished. */
public final class TurnVoice {

    private static final Words WORDS = Words.beside(TurnVoice.class);

    private final Onlooker onlooker;
    private final Speech speech;
    private final Talk talk;
    private final RoutineGuide routine = new RoutineGuide();
    private final PlaceGuide places = new PlaceGuide();
    private final Set<Integer> askedFor = new HashSet<>();
    private boolean remarkSpoken;
    private boolean leads = true;
    private volatile boolean landed;

    TurnVoice(Onlooker onlooker, Speech speech, Talk talk) {
        this.onlooker = onlooker;
        this.speech = speech;
        this.talk = talk;
    }

    /** Whether somebody has begun to land, so that nothing may be spoken out of turn. */
    public boolean landed() {
        return landed;
    }

    /** When the athlete hears something. */
    public TalkChoice choice() {
        return talk.choice();
    }

    /** Whether the talk is silent, since somebody fell. */
    public boolean paused() {
        return talk.paused();
    }

    /** Whether the opening routine is over, well done or not. */
    public boolean routineIsOver() {
        return routine.isOver();
    }

    /** Whether the opening routine is led through; else that waits. */
    public void lead(boolean now) {
        leads = now;
    }

    /** Changes when the athlete hears something. */
    public void choose(TalkChoice choice) {
        talk.choose(choice);
        tell(WORDS.say("talk." + choice.code()));
    }

    /** The coach says that all is well after a fall. */
    public void goOn() {
        tell(WORDS.say(talk.paused() ? "go.on" : "go.on.nothing"));
        talk.goOn();
    }

    /** The coach says where a sensor is worn that does not know it. */
    public void worn(int sensor, Place place, WireRecorder recorder) throws IOException {
        String number = String.format(Locale.ROOT, "%04X", sensor);
        if (!askedFor.contains(sensor)) {
            tell(WORDS.say("worn.unknown", number));
            return;
        }
        recorder.place(sensor, place);
        tell(WORDS.say("worn." + place.code(), number));
    }

    /** Asks where sensors are worn that do not say so. */
    void place(double nowS, WireRecorder recorder) throws IOException {
        List<Integer> unplaced = recorder.unplaced();
        askedFor.addAll(unplaced);
        Set<Place> taken = EnumSet.noneOf(Place.class);
        for (Place place : Place.values()) {
            if (recorder.samples(place) > 0) {
                taken.add(place);
            }
        }
        PlaceGuide.Step step = places.look(nowS, unplaced, taken, recorder.tapped());
        step.said().forEach(said -> utter(Topic.PLACE, said));
        for (Map.Entry<Integer, Place> worn : step.places().entrySet()) {
            recorder.place(worn.getKey(), worn.getValue());
        }
    }

    /**
     * Says what follows from what is new.
     *
     * @param nowS time of the newest sample, s
     */
    void hear(News news, LiveLandings live, double nowS) {
        landed |= !news.landings().isEmpty();
        talk.hear(news, nowS, live.goesOn()).forEach(said -> {
            utter(Topic.LANDING, said);
            remarkSpoken = said.spoken() && !said.urgent();
        });
        OpeningState opening = live.opening();
        if (talk.mustBeSilent(nowS, opening.standingS()) && remarkSpoken) {
            remarkSpoken = false;
            speech.hush();
        }
        if (leads && !routine.isOver() && nowS > 0) {
            routine.look(opening, nowS).ifPresent(said -> utter(Topic.ROUTINE, said));
        }
    }

    /** At the end only falls still matter. */
    void end(News news, double nowS) {
        talk.hear(new News(List.of(), news.falls()), nowS, true).forEach(said -> utter(Topic.LANDING, said));
    }

    private void tell(String sentence) {
        onlooker.told(Topic.RECORDING, sentence);
    }

    private void utter(Topic topic, Utterance said) {
        if (said.written()) {
            onlooker.told(topic, said.text());
        }
        if (said.urgent()) {
            speech.sayAtOnce(said.text());
        } else if (said.spoken()) {
            speech.say(said.text());
        }
    }
}

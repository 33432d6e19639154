package evenfall.report.command;

import evenfall.fusion.analysis.OpeningState;
import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.report.coaching.PlaceGuide;
import evenfall.report.coaching.RoutineGuide;
import evenfall.report.coaching.Talk;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.coaching.Utterance;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.speech.Speech;
import java.io.IOException;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Says, through one session, what the coach and the athlete should hear: on standard error, and aloud where that is wished. */
final class SessionVoice {

    private final Console console;
    private final Speech speech;
    private final Talk talk;
    private final RoutineGuide routine = new RoutineGuide();
    private final PlaceGuide places = new PlaceGuide();
    private final Set<Integer> askedFor = new HashSet<>();
    private boolean remarkSpoken;
    private volatile boolean landed;

    SessionVoice(Console console, Speech speech, Talk talk) {
        this.console = console;
        this.speech = speech;
        this.talk = talk;
    }

    /** Whether somebody has begun to land, so that nothing may be spoken out of turn. */
    boolean landed() {
        return landed;
    }

    /** When the athlete hears something. */
    TalkChoice choice() {
        return talk.choice();
    }

    void choose(TalkChoice choice) {
        talk.choose(choice);
        console.say(
                switch (choice) {
                    case EVERY -> "The athlete hears every landing that was not as usual.";
                    case THIRD -> "The athlete hears every third landing.";
                    case END -> "The athlete hears a summary at the end.";
                    case NONE -> "The athlete hears nothing.";
                });
    }

    void goOn() {
        console.say(talk.paused() ? "The talk goes on." : "There was nothing to go on from.");
        talk.goOn();
    }

    /** The coach says where a sensor is worn that does not know it. */
    void worn(int sensor, Place place, WireRecorder recorder) throws IOException {
        String number = String.format(Locale.ROOT, "%04X", sensor);
        if (!askedFor.contains(sensor)) {
            console.say("There is no sensor " + number + " that does not know where it is worn.");
            return;
        }
        recorder.place(sensor, place);
        console.say("Sensor " + number + " is worn at the " + (place == Place.PELVIS ? "pelvis." : "upper back."));
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
        step.said().forEach(this::utter);
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
            utter(said);
            remarkSpoken = said.spoken() && !said.urgent();
        });
        OpeningState opening = live.opening();
        if (talk.mustBeSilent(nowS, opening.standingS()) && remarkSpoken) {
            remarkSpoken = false;
            speech.hush();
        }
        if (!routine.isOver() && nowS > 0) {
            routine.look(opening, nowS).ifPresent(this::utter);
        }
    }

    /** At the end only falls still matter. */
    void end(News news, double nowS) {
        talk.hear(new News(List.of(), news.falls()), nowS, true).forEach(this::utter);
    }

    private void utter(Utterance said) {
        if (said.written()) {
            console.say(said.text());
        }
        if (said.urgent()) {
            speech.sayAtOnce(said.text());
        } else if (said.spoken()) {
            speech.say(said.text());
        }
    }
}

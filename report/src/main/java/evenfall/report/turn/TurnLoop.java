package evenfall.report.turn;

import evenfall.ingest.place.Place;
import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.words.Words;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.live.RecordingNews;
import evenfall.report.turn.Onlooker.Topic;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Looks on while a recorder records: passes on landings, and what a person should know, until it is to end. */
final class TurnLoop {

    private static final Words WORDS = Words.beside(TurnLoop.class);

    private final Onlooker onlooker;
    private final WireRecorder recorder;
    private final RecordingNews news;
    private final LiveLandings live;
    private final TurnVoice voice;
    private final LandingCap cap;
    private final Warming warming;
    private final Set<String> told = new HashSet<>();
    private final Map<Place, Integer> strapMoves = new EnumMap<>(Place.class);

    TurnLoop(
            Onlooker onlooker,
            WireRecorder recorder,
            RecordingNews news,
            LiveLandings live,
            TurnVoice voice,
            LandingCap cap,
            Warming warming) {
        this.cap = cap;
        this.warming = warming;
        this.onlooker = onlooker;
        this.recorder = recorder;
        this.news = news;
        this.live = live;
        this.voice = voice;
    }

    /** Looks on until whoever leads ends the turn, or writing failed. */
    void run(Leader leader) throws IOException, InterruptedException {
        long start = System.nanoTime();
        boolean ended = false;
        while (!ended) {
            double nowS = (System.nanoTime() - start) * 1e-9;
            ended = leader.look(nowS, voice, recorder)
                    || recorder.failure().isPresent()
                    || recorder.awaitEnd(leader.everyMs());
            if (!leader.inHaste()) {
                news.at(nowS).forEach(sentence -> onlooker.told(Topic.RECORDING, sentence));
                voice.place(nowS, recorder);
            }
            look(live::soFar, false);
            onlooker.looked(nowS, recorder, live);
        }
        recorder.close();
        recorder.failure().ifPresent(failure -> onlooker.told(Topic.RECORDING, unwritten(failure)));
        look(live::atEnd, true);
    }

    /** Whatever goes wrong in looking on, the recording itself must go on. */
    private void look(Function<Recording, News> analysis, boolean end) throws IOException {
        Optional<Recording> soFar = recorder.soFar();
        if (soFar.isEmpty()) {
            return;
        }
        News found;
        try {
            found = analysis.apply(soFar.get());
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            if (told.add(String.valueOf(e))) {
                onlooker.told(Topic.RECORDING, WORDS.say("unseen", String.valueOf(e)));
            }
            return;
        }
        onlooker.came(found);
        cap.count(found).ifPresent(sentence -> onlooker.told(Topic.LANDING, sentence));
        moved();
        if (!end) {
            warming.seen(live.told().size());
        }
        double newestS = soFar.get().pelvis().stream().durationS();
        if (end) {
            voice.end(found, newestS);
        } else {
            voice.hear(found, live, newestS);
        }
    }

    private void moved() {
        for (Place place : Place.values()) {
            int moves = live.strapMoves(place);
            if (moves > strapMoves.getOrDefault(place, 0)) {
                onlooker.told(Topic.RECORDING, WORDS.say("moved", place.words()));
            }
            strapMoves.put(place, moves);
        }
    }

    private static String unwritten(IOException failure) {
        String why = String.valueOf(failure.getMessage());
        return failure instanceof DiskFullException ? why : WORDS.say("unwritten", why);
    }
}

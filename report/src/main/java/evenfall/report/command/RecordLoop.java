package evenfall.report.command;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.live.RecordingNews;
import evenfall.report.log.AthleteFolder;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Looks on while a recorder records: prints landings, and has said what a person should know, until it is to end. */
final class RecordLoop {

    /** So often what is new is looked at: soon enough for a display of how somebody stands. */
    private static final long LOOK_MS = 40;

    private final Console console;
    private final WireRecorder recorder;
    private final RecordingNews news;
    private final LiveLandings live;
    private final NewsPrinter printer;
    private final SessionVoice voice;
    private final Set<String> told = new HashSet<>();

    RecordLoop(
            Console console,
            WireRecorder recorder,
            RecordingNews news,
            LiveLandings live,
            NewsPrinter printer,
            SessionVoice voice) {
        this.console = console;
        this.recorder = recorder;
        this.news = news;
        this.live = live;
        this.printer = printer;
        this.voice = voice;
    }

    /**
     * Looks on until the time is up, the end is wished for, writing failed, or the sensors are handed over.
     *
     * @return the athlete they are handed over to, if that was why
     */
    Optional<AthleteFolder> run(double seconds, CoachDesk desk, EndOnSignal signal)
            throws IOException, InterruptedException {
        long start = System.nanoTime();
        Optional<AthleteFolder> next = Optional.empty();
        boolean ended = false;
        while (!ended) {
            double nowS = (System.nanoTime() - start) * 1e-9;
            next = desk.look(recorder, voice);
            ended = signal.wanted()
                    || desk.endWanted()
                    || next.isPresent()
                    || nowS >= seconds
                    || recorder.failure().isPresent()
                    || recorder.awaitEnd(LOOK_MS);
            if (!signal.wanted()) {
                news.at(nowS).forEach(console::say);
                voice.place(nowS, recorder);
            }
            look(live::soFar, false);
        }
        recorder.close();
        recorder.failure().ifPresent(failure -> console.say(unwritten(failure)));
        look(live::atEnd, true);
        return next;
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
                console.say("Landings cannot be shown at the moment (" + e + "); the recording goes on.");
            }
            return;
        }
        printer.print(found);
        double newestS = soFar.get().pelvis().stream().durationS();
        if (end) {
            voice.end(found, newestS);
        } else {
            voice.hear(found, live, newestS);
        }
    }

    private static String unwritten(IOException failure) {
        return failure instanceof DiskFullException
                ? String.valueOf(failure.getMessage())
                : "The recording could not be written any further (" + failure.getMessage()
                        + "); what came until then is kept.";
    }

    /** {@code 1 landing}, {@code 7 landings}. */
    static String landings(Session session) {
        long count = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
        return count + (count == 1 ? " landing" : " landings");
    }
}

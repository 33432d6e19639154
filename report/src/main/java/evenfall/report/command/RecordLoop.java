package evenfall.report.command;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.live.RecordingNews;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Looks on while a recorder records: prints landings, and says what a person should know, until it is to end. */
final class RecordLoop {

    /** So often what is new is looked at: soon enough for a display of how somebody stands. */
    private static final long LOOK_MS = 40;

    private final Console console;
    private final WireRecorder recorder;
    private final RecordingNews news;
    private final LiveLandings live;
    private final NewsPrinter printer;
    private final Set<String> told = new HashSet<>();

    RecordLoop(Console console, WireRecorder recorder, RecordingNews news, LiveLandings live, NewsPrinter printer) {
        this.console = console;
        this.recorder = recorder;
        this.news = news;
        this.live = live;
        this.printer = printer;
    }

    /** Looks on until the time is up, the end is wished for or writing failed. */
    void run(double seconds, EndOnSignal signal) throws IOException, InterruptedException {
        long start = System.nanoTime();
        boolean ended = false;
        while (!ended) {
            ended = signal.wanted()
                    || (System.nanoTime() - start) * 1e-9 >= seconds
                    || recorder.failure().isPresent()
                    || recorder.awaitEnd(LOOK_MS);
            if (!signal.wanted()) {
                news.at((System.nanoTime() - start) * 1e-9).forEach(console::say);
            }
            look(live::soFar);
        }
        recorder.close();
        recorder.failure().ifPresent(failure -> console.say(unwritten(failure)));
        look(live::atEnd);
    }

    /** Whatever goes wrong in looking on, the recording itself must go on. */
    private void look(Function<Recording, News> analysis) throws IOException {
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

package evenfall.report.command;

import evenfall.fusion.event.EventKind;
import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.report.json.LandingsDocument;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.live.RecordingNews;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.table.SessionText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/** Looks on while a recorder records: prints landings, and says what a person should know, until it is to end. */
final class RecordLoop {

    private static final long LOOK_MS = 100;

    /** Analyses follow one another no closer than this, and no closer than the last one took. */
    private static final long BETWEEN_NANOS = 300_000_000L;

    private static final double SHORTEST_S = 2;

    private final Console console;
    private final WireRecorder recorder;
    private final RecordingNews news;
    private final LiveLandings live;
    private final OutputFormat format;
    private final Set<String> told = new HashSet<>();

    RecordLoop(Console console, WireRecorder recorder, RecordingNews news, LiveLandings live, OutputFormat format) {
        this.console = console;
        this.recorder = recorder;
        this.news = news;
        this.live = live;
        this.format = format;
    }

    /** Looks on until the time is up, the end is wished for or writing failed. */
    void run(double seconds, EndOnSignal signal) throws IOException, InterruptedException {
        ExecutorService analyses = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "live landings");
            thread.setDaemon(true);
            return thread;
        });
        long start = System.nanoTime();
        try {
            lookOn(analyses, start, seconds, signal);
            recorder.close();
            recorder.failure().ifPresent(failure -> console.say(unwritten(failure)));
            Optional<Recording> whole = recorder.soFar();
            if (whole.isPresent() && whole.get().pelvis().stream().durationS() >= SHORTEST_S) {
                print(waitFor(analyses.submit(() -> live.atEnd(whole.get()))));
            }
        } finally {
            analyses.shutdownNow();
        }
    }

    private void lookOn(ExecutorService analyses, long start, double seconds, EndOnSignal signal)
            throws IOException, InterruptedException {
        Future<News> running = null;
        long begunAt = start;
        long nextAt = start;
        boolean ended = false;
        while (!ended) {
            long now = System.nanoTime();
            ended = signal.wanted()
                    || (now - start) * 1e-9 >= seconds
                    || recorder.failure().isPresent()
                    || recorder.awaitEnd(LOOK_MS);
            if (!signal.wanted()) {
                news.at((now - start) * 1e-9).forEach(console::say);
            }
            if (running != null && (running.isDone() || ended)) {
                print(waitFor(running));
                running = null;
                nextAt = System.nanoTime() + Math.max(BETWEEN_NANOS, System.nanoTime() - begunAt);
            }
            if (running == null && !ended && now >= nextAt) {
                begunAt = now;
                running = begin(analyses);
            }
        }
    }

    private @Nullable Future<News> begin(ExecutorService analyses) {
        if (recorder.counts().good() == 0) {
            return null;
        }
        return analyses.submit(() -> {
            Optional<Recording> soFar = recorder.soFar();
            return soFar.isPresent() && soFar.get().pelvis().stream().durationS() >= SHORTEST_S
                    ? live.soFar(soFar.get())
                    : LiveLandings.NOTHING;
        });
    }

    private static String unwritten(IOException failure) {
        return failure instanceof DiskFullException
                ? String.valueOf(failure.getMessage())
                : "The recording could not be written any further (" + failure.getMessage()
                        + "); what came until then is kept.";
    }

    private void print(News news) throws IOException {
        for (SessionLanding landing : news.landings()) {
            String line = format == OutputFormat.JSON ? LandingsDocument.line(landing) : SessionText.line(landing);
            OutputStream out = console.results();
            out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
        }
        for (double fall : news.falls()) {
            console.say(String.format(Locale.ROOT, "A fall at %.1f s: check the athlete before anything else.", fall));
        }
    }

    private News waitFor(Future<News> analysis) throws InterruptedException {
        try {
            return analysis.get();
        } catch (ExecutionException e) {
            // Whatever goes wrong in looking on, the recording itself must go on.
            String what = String.valueOf(e.getCause());
            if (told.add(what)) {
                console.say("Landings cannot be shown at the moment (" + what + "); the recording goes on.");
            }
            return LiveLandings.NOTHING;
        }
    }

    /** {@code 1 landing}, {@code 7 landings}. */
    static String landings(Session session) {
        long count = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
        return count + (count == 1 ? " landing" : " landings");
    }
}

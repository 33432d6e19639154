package evenfall.report.turn;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.report.html.SessionPage;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionFolder;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.SessionBackground;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Goes through the end of a session a few times while there is time: what analysing and drawing need is loaded and compiled
 * by then, and the coach need not wait for it. Nothing of it is kept, and nothing that goes wrong with it matters.
 */
final class Warming implements AutoCloseable {

    /** After so many landings: few enough to take a moment only. */
    private static final int[] AFTER = {2, 8, 16, 32};

    private final AthleteFolder athlete;
    private final SessionFolder session;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "warming");
        thread.setDaemon(true);
        return thread;
    });
    private int times;

    Warming(AthleteFolder athlete, SessionFolder session) {
        this.athlete = athlete;
        this.session = session;
    }

    /** So many landings were seen so far. */
    void seen(int landings) {
        boolean due = false;
        while (times < AFTER.length && landings >= AFTER[times]) {
            times++;
            due = true;
        }
        if (due) {
            worker.execute(this::goThrough);
        }
    }

    private void goThrough() {
        try {
            LoggedSessions sessions = new LoggedSessions(athlete, Progress.NONE, sentence -> {});
            Session soFar = sessions.soFar(session.date(), KeptRecording.read(session.rawFolder(), Progress.NONE));
            SessionPage.write(
                    soFar,
                    SessionBackground.of(athlete, session.date(), sessions.diary(), sentence -> {}),
                    new StringBuilder());
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            // What is still wrong at the end is said there; a turn that ended meanwhile cuts this short.
        }
    }

    /** What has not begun is not needed any more. */
    @Override
    public void close() {
        worker.shutdownNow();
    }
}

package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import java.io.PrintStream;
import java.util.Locale;

/** One line on a terminal that grows while long work goes on; shown from one second after the start. */
final class ProgressBar implements Progress {

    private static final long QUIET_NANOS = 1_000_000_000L;
    private static final long REDRAW_NANOS = 100_000_000L;
    private static final int WIDTH = 30;
    private static final int STAGE_WIDTH = 40;

    private final PrintStream err;
    private final long startedAt = System.nanoTime();
    private long drawnAt = startedAt;
    private boolean shown;

    ProgressBar(PrintStream err) {
        this.err = err;
    }

    @Override
    public synchronized void at(String stage, double share) {
        long now = System.nanoTime();
        if (now - startedAt < QUIET_NANOS || now - drawnAt < REDRAW_NANOS) {
            return;
        }
        drawnAt = now;
        shown = true;
        double done = Math.max(0, Math.min(1, share));
        int filled = (int) Math.round(done * WIDTH);
        String name = stage.length() > STAGE_WIDTH ? stage.substring(0, STAGE_WIDTH) : stage;
        err.printf(
                Locale.ROOT,
                "\r[%s%s] %3.0f %%  %-" + STAGE_WIDTH + "s",
                "#".repeat(filled),
                ".".repeat(WIDTH - filled),
                done * 100,
                name);
        err.flush();
    }

    /** Takes the line off the screen. */
    synchronized void clear() {
        if (shown) {
            err.print("\r" + " ".repeat(WIDTH + STAGE_WIDTH + 12) + "\r");
            err.flush();
            shown = false;
        }
    }
}

package evenfall.report.turn;

import evenfall.ingest.recorder.WireRecorder;
import java.io.IOException;

/** Whoever leads through a turn. */
public interface Leader {

    /**
     * The turn begins.
     *
     * @param end ends it at once, from any thread
     */
    void begins(Runnable end);

    /**
     * Does what was asked for since the last look.
     *
     * @param nowS since the turn began, s
     * @return whether the turn is over
     */
    boolean look(double nowS, TurnVoice voice, WireRecorder recorder) throws IOException;

    /** So often what is new is looked at, ms: soon enough for a display of how somebody stands. */
    default long everyMs() {
        return 40;
    }

    /** Whether the end is so near that nothing needs to be said any more. */
    boolean inHaste();
}

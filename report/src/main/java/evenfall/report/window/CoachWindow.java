package evenfall.report.window;

import evenfall.report.log.TrainingLog;
import evenfall.report.speech.Speech;
import java.awt.GraphicsEnvironment;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The coach's window. */
public final class CoachWindow {

    private final TrainingLog log;
    private final Speech speech;
    private final double speed;
    private final Runnable closed;
    private @Nullable Frame frame;

    /**
     * A window that is not open yet.
     *
     * @param speed rehearsals are so many times as fast as true
     * @param closed told when the window was closed and everything is stored
     */
    public CoachWindow(TrainingLog log, Speech speech, double speed, Runnable closed) {
        this.log = log;
        this.speech = speech;
        this.speed = speed;
        this.closed = closed;
    }

    /** Whether there is a screen to open a window on. */
    public static boolean hasScreen() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window; from any thread. */
    public void open() {
        SwingUtilities.invokeLater(() -> {
            Skin skin = new Skin();
            skin.wear();
            Frame opened = new Frame(skin, log, speech, speed, closed);
            frame = opened;
            opened.open();
        });
    }

    /** Closes it as the person would; from any thread. */
    public void close() {
        SwingUtilities.invokeLater(() -> {
            Frame opened = frame;
            if (opened != null) {
                opened.close();
            }
        });
    }
}

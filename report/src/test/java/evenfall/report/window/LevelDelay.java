package evenfall.report.window;

import evenfall.report.demo.RehearsalStory;
import evenfall.report.log.TrainingLog;
import evenfall.report.rehearsal.Pace;
import evenfall.report.round.RehearsedSensors;
import evenfall.report.round.Round;
import evenfall.report.round.Step;
import evenfall.report.round.Surroundings;
import evenfall.report.round.Threads;
import evenfall.report.round.Tone;
import evenfall.report.speech.Unspoken;
import java.awt.Toolkit;
import java.net.URI;
import java.nio.file.Files;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/**
 * Measures how long each sample takes from the moment a sensor would have sent it until the first level display that knows
 * of it is painted. Needs a screen; ends after {@value #SECONDS} s. A line or a USB adapter is not in it.
 */
final class LevelDelay {

    private static final int SECONDS = 30;
    private static final double INTERVAL_S = 0.005;
    /** Until then classes are loaded. */
    private static final double WARM_S = 4;

    private final List<Double> delaysMs = Collections.synchronizedList(new ArrayList<>());
    private double lastS;
    private volatile Pace pace = Pace.times(1);

    private LevelDelay() {}

    /** Measures and prints. */
    public static void main(String[] args) throws Exception {
        new LevelDelay().measure();
        Runtime.getRuntime().halt(0);
    }

    private void measure() throws Exception {
        ExecutorService back = Executors.newSingleThreadExecutor();
        RehearsedSensors sensors = new RehearsedSensors(RehearsalStory.invent(1), () -> {
            pace = Pace.times(1);
            return pace;
        });
        TrainingLog log = TrainingLog.open(Files.createTempDirectory("level-delay"));
        SwingUtilities.invokeAndWait(() -> {
            Skin skin = new Skin();
            skin.wear();
            LevelDrawing level = new LevelDrawing(skin);
            level.onPainted(timeS -> {
                Toolkit.getDefaultToolkit().sync();
                painted(timeS, pace.nowS());
            });
            JFrame frame = new JFrame();
            frame.add(level);
            frame.setSize(1000, 600);
            frame.setVisible(true);
            Round[] round = new Round[1];
            round[0] = new Round(
                    log,
                    new Threads(SwingUtilities::invokeLater, back),
                    new Silence(),
                    Unspoken.WISHED,
                    Clock.system(ZoneId.systemDefault()),
                    () -> SwingUtilities.invokeLater(() -> look(round[0], level)));
            round[0].use(sensors);
            round[0].add("Somebody", true, "");
        });
        Thread.sleep(1000L * SECONDS);
        List<Double> sorted = new ArrayList<>(delaysMs);
        Collections.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%d samples: median %.0f ms, 95 in 100 within %.0f ms, the longest %.0f ms%n",
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() - 1));
    }

    /** Each sample since the last painting is seen only now. */
    private void painted(double timeS, double nowS) {
        if (lastS > WARM_S) {
            for (double sampleS = lastS + INTERVAL_S; sampleS <= timeS + INTERVAL_S / 2; sampleS += INTERVAL_S) {
                delaysMs.add(1000 * (nowS - sampleS));
            }
        }
        lastS = timeS;
    }

    private static void look(Round round, LevelDrawing level) {
        if (round.step() == Step.WHO && !round.people().isEmpty()) {
            round.choose(round.people().get(0));
            round.answered();
        }
        level.show(round.desk().glance().pelvis(), round.desk().glance().upperBack());
    }

    /** Neither sound nor browser. */
    private static final class Silence implements Surroundings {

        @Override
        public void sound(Tone tone) {}

        @Override
        public void browse(URI page) {}
    }
}

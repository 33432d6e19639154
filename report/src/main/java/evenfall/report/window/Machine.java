package evenfall.report.window;

import evenfall.report.round.Surroundings;
import evenfall.report.round.Tone;
import java.awt.Desktop;
import java.io.IOException;
import java.net.URI;
import java.util.function.Consumer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Tones and pages by this machine. Where it has no sound or no browser, nothing but that is missing. */
public final class Machine implements Surroundings {

    private static final float RATE = 44_100;
    private static final double LOUD = 0.4;

    private final Consumer<String> unshown;

    /**
     * This machine.
     *
     * @param unshown told, in a sentence, where a page lies that could not be shown
     */
    public Machine(Consumer<String> unshown) {
        this.unshown = unshown;
    }

    @Override
    public void sound(Tone tone) {
        double[] pitches = switch (tone) {
            case STEP -> new double[] {660};
            case READY -> new double[] {660, 880};
            case ALARM -> new double[] {440, 330, 440, 330};
        };
        Thread thread = new Thread(() -> play(pitches), "tone");
        thread.setDaemon(true);
        thread.start();
    }

    private static void play(double[] pitches) {
        AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            line.open(format);
            line.start();
            for (double pitch : pitches) {
                byte[] samples = sine(pitch, 0.16);
                line.write(samples, 0, samples.length);
            }
            line.drain();
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // No sound here; what it says is written too.
            return;
        }
    }

    /** A sine that swells and fades, so that it does not click. */
    private static byte[] sine(double pitch, double seconds) {
        int count = (int) (RATE * seconds);
        byte[] samples = new byte[2 * count];
        for (int i = 0; i < count; i++) {
            double swell = Math.sin(Math.PI * i / count);
            int value = (int) (Short.MAX_VALUE * LOUD * swell * Math.sin(2 * Math.PI * pitch * i / RATE));
            samples[2 * i] = (byte) value;
            samples[2 * i + 1] = (byte) (value >> 8);
        }
        return samples;
    }

    @Override
    public void browse(URI page) {
        Thread thread = new Thread(() -> show(page), "browser");
        thread.setDaemon(true);
        thread.start();
    }

    private void show(URI page) {
        try {
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(page);
                return;
            }
        } catch (IOException | UnsupportedOperationException e) {
            // Said below, as where there is no browser at all.
            unshown.accept(Keys.WORDS.say("unshown", page.toString()));
            return;
        }
        unshown.accept(Keys.WORDS.say("unshown", page.toString()));
    }
}

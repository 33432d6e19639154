package evenfall.report.command;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Port;
import evenfall.ingest.serial.SerialPorts;
import evenfall.report.live.Playback;
import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays a recording onto a port as its sensors would. */
@Command(
        name = "send",
        description =
                "Plays a recording onto a port as the sensors would: for rehearsal without sensors, and for tests.")
final class SendCommand implements Task {

    private static final String TEXT = "text";
    private static final int MOST_AT_ONCE = 64;
    private static final long PAUSE_MS = 2;

    /** What was written last may still be on its way when a port is closed. */
    private static final long LINGER_MS = 500;

    private final Console console;

    @Mixin
    private RecordingOptions recording;

    @Option(names = "--port", required = true, paramLabel = "PATH", description = "The port to write to.")
    private String port;

    @Option(names = "--baud", paramLabel = "N", description = "Speed of the port, ${DEFAULT-VALUE} if not given.")
    private int baud = SerialPorts.USUAL_BAUD;

    @Option(names = "--wire", paramLabel = "FORM", description = "text, the only form so far.")
    private String wire = TEXT;

    @Option(
            names = "--speed",
            paramLabel = "X",
            description = "So many times as fast as it was, ${DEFAULT-VALUE} if not given.")
    private double speed = 1;

    SendCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException, InterruptedException {
        if (!TEXT.equals(wire)) {
            throw new UsageException("--wire " + wire + " is not spoken; use text.");
        }
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new UsageException("--speed " + speed + " is no speed; give a number above 0, such as 1 or 4.");
        }
        if (baud <= 0) {
            throw new UsageException("--baud " + baud + " is no speed of a port; usual are 115200 and 921600.");
        }
        Recording read = recording.files().read(console.progress());
        try (Port open = SerialPorts.open(port, baud)) {
            play(new Playback(read), open, read.pelvis().stream().durationS());
            Thread.sleep(LINGER_MS);
        }
        return CommandRunner.DONE;
    }

    private void play(Playback playback, Port open, double durationS) throws IOException, InterruptedException {
        long start = System.nanoTime();
        while (!playback.ended()) {
            double nowS = (System.nanoTime() - start) * 1e-9 * speed;
            byte[] bytes = playback.due(nowS, MOST_AT_ONCE);
            if (bytes.length == 0) {
                Thread.sleep(PAUSE_MS);
            } else {
                open.write(bytes, 0, bytes.length);
                console.progress().at("sending", durationS > 0 ? Math.min(1, nowS / durationS) : 1);
            }
        }
    }
}

package evenfall.report.command;

import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.Port;
import evenfall.ingest.serial.SerialPorts;
import evenfall.ingest.words.Words;
import evenfall.report.rehearsal.Faults;
import evenfall.report.rehearsal.Pace;
import evenfall.report.rehearsal.PatientPort;
import evenfall.report.rehearsal.Playback;
import evenfall.report.rehearsal.Player;
import evenfall.report.rehearsal.WireForm;
import java.io.IOException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays a recording onto a port as its sensors would. */
@Command(name = "send", addMethodSubcommands = false)
final class SendCommand implements Task {

    private static final Words WORDS = Words.beside(SendCommand.class);

    /** What was written last may still be on its way when a port is closed. */
    private static final long LINGER_MS = 500;

    /** Whoever records has said by then that nothing comes. */
    private static final long PATIENCE_MS = 2500;

    private final Console console;

    @Mixin
    private RecordingOptions recording;

    @Option(names = "--port", required = true, paramLabel = "PATH")
    private String port;

    @Option(names = "--baud", paramLabel = "N")
    private int baud = SerialPorts.USUAL_BAUD;

    @Option(names = "--wire", paramLabel = "FORM")
    private String wire = "text";

    @Option(names = "--unplaced")
    private boolean unplaced;

    @Option(names = "--speed", paramLabel = "X")
    private double speed = 1;

    @Mixin
    private FaultOptions faults;

    SendCommand(Console console) {
        this.console = console;
    }

    @Override
    public int perform() throws IOException, InterruptedException {
        WireForm form = form();
        if (!(speed > 0) || Double.isInfinite(speed)) {
            throw new UsageException(WORDS.say("send.speed", String.valueOf(speed)));
        }
        if (baud <= 0) {
            throw new UsageException(WORDS.say("send.baud", baud));
        }
        Recording read = recording.files().read(console.progress());
        Faults wrong = faults.faults();
        Playback playback = new Playback(read, form, wrong);
        Player player = new Player(playback, wrong.unplugged(), this::open, Pace.times(speed));
        try (Port last = player.play(console.progress())) {
            if (last != null) {
                Thread.sleep(LINGER_MS);
            }
        }
        if (playback.lost() + playback.damaged() > 0) {
            console.say(WORDS.say(
                    "send.suffered",
                    playback.lost(),
                    String.valueOf(playback.lost()),
                    playback.damaged(),
                    String.valueOf(playback.damaged())));
        }
        return CommandRunner.DONE;
    }

    private Port open() {
        return new PatientPort(
                SerialPorts.open(port, baud), PATIENCE_MS, () -> console.say(WORDS.say("send.unread", port)));
    }

    private WireForm form() {
        if ("text".equals(wire)) {
            if (unplaced) {
                throw new UsageException(WORDS.say("send.placed"));
            }
            return WireForm.TEXT;
        }
        if ("binary".equals(wire)) {
            return unplaced ? WireForm.BINARY_UNPLACED : WireForm.BINARY;
        }
        throw new UsageException(WORDS.say("send.wire", wire));
    }
}

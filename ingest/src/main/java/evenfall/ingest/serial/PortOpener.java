package evenfall.ingest.serial;

import evenfall.ingest.recording.UnusableInputException;
import java.util.List;

/** Where ports come from: this machine, or a bench on which a test plugs and unplugs. Safe for use from several threads. */
public interface PortOpener {

    /**
     * Opens a port, eight bits, no parity, one stop bit.
     *
     * @param path such as {@code /dev/ttyACM0} or {@code COM3}
     * @param baud speed, bits a second
     * @throws UnusableInputException if it is missing, in use, not allowed or no port, with a sentence for a person
     */
    Port open(String path, int baud);

    /** The ports that are known now, in use or not, in order of their paths. A path not among them may still be opened. */
    List<PortIdentity> present();
}

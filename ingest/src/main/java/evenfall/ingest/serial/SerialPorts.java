package evenfall.ingest.serial;

import evenfall.ingest.recording.UnusableInputException;
import java.util.List;

/** The serial ports of this machine. */
public final class SerialPorts {

    /** The usual speed of such sensors; a sensor on USB takes any. */
    public static final int USUAL_BAUD = 115_200;

    /** The usual speeds, bits a second, the likeliest first. */
    public static final List<Integer> USUAL_SPEEDS = List.of(USUAL_BAUD, 921_600, 460_800, 230_400, 57_600);

    /** Where this machine's ports come from. */
    public static final PortOpener MACHINE = new MachinePorts();

    private SerialPorts() {}

    /**
     * The ports that could be opened just now, to be offered. Each is opened for an instant, since nothing else tells on
     * every system; a board that starts anew when its port is opened does so.
     */
    public static List<PortIdentity> free() {
        return MACHINE.present().stream().filter(SerialPorts::isFree).toList();
    }

    /**
     * Opens a port, eight bits, no parity, one stop bit.
     *
     * @param path such as {@code /dev/ttyACM0} or {@code COM3}
     * @param baud speed, bits a second
     * @throws UnusableInputException if it is missing, in use, not allowed or no port
     */
    public static Port open(String path, int baud) {
        return MACHINE.open(path, baud);
    }

    private static boolean isFree(PortIdentity port) {
        try {
            MACHINE.open(port.path(), USUAL_BAUD).close();
            return true;
        } catch (UnusableInputException e) {
            return false;
        }
    }
}

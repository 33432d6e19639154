package evenfall.ingest.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import evenfall.ingest.recording.UnusableInputException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The serial ports of this machine. */
public final class SerialPorts {

    /** The usual speed of such sensors; a sensor on USB takes any. */
    public static final int USUAL_BAUD = 115_200;

    private static final int WAIT_MS = 300;

    private SerialPorts() {}

    /** Paths of the ports the system knows; a path that is not among them may still be opened. */
    public static List<String> offered() {
        return Arrays.stream(SerialPort.getCommPorts())
                .map(SerialPort::getSystemPortPath)
                .sorted()
                .toList();
    }

    /**
     * Opens a port, eight bits, no parity, one stop bit.
     *
     * @param path such as {@code /dev/ttyACM0} or {@code COM3}
     * @param baud speed, bits a second
     * @throws UnusableInputException if it is missing, in use or not allowed
     */
    public static Port open(String path, int baud) {
        SerialPort port;
        try {
            port = SerialPort.getCommPort(path);
        } catch (SerialPortInvalidPortException e) {
            throw new UnusableInputException(missing(path), e);
        }
        port.setComPortParameters(baud, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING | SerialPort.TIMEOUT_WRITE_BLOCKING, WAIT_MS, 0);
        // The error code is not zero after some openings that went well: only the answer itself is to be trusted.
        if (!port.openPort(0)) {
            throw new UnusableInputException(refused(path));
        }
        return new OpenPort(path, port);
    }

    private static String missing(String path) {
        List<String> offered = offered();
        return "There is no port " + path + "; plug the receiver in"
                + (offered.isEmpty()
                        ? " (no port is there now) and give the path the system shows for it."
                        : " or choose one that is there: " + String.join(", ", offered) + ".");
    }

    private static String refused(String path) {
        try {
            Path file = Path.of(path);
            if (file.isAbsolute() && !Files.exists(file)) {
                return missing(path);
            }
            if (file.isAbsolute() && !(Files.isReadable(file) && Files.isWritable(file))) {
                return "The port " + path
                        + " may not be opened by this user; ask for access to serial ports (often the group dialout) and log in"
                        + " again.";
            }
        } catch (InvalidPathException e) {
            return missing(path);
        }
        return "The port " + path
                + " could not be opened, most likely because another program has it; close that program and"
                + " try again.";
    }
}

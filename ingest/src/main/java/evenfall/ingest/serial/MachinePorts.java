package evenfall.ingest.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import evenfall.ingest.recording.UnusableInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The serial ports of this machine, by the serial library. */
final class MachinePorts implements PortOpener {

    private static final int WAIT_MS = 300;
    private static final boolean WINDOWS =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");

    /** Pseudo-terminals, which have no line and so no speed. */
    private static final Path PSEUDO_TERMINALS = Path.of("/dev/pts");

    @Override
    public List<PortIdentity> present() {
        return Arrays.stream(SerialPort.getCommPorts())
                .map(port -> new PortIdentity(
                        port.getSystemPortPath(),
                        port.getPortDescription(),
                        port.getSerialNumber(),
                        port.getVendorID(),
                        port.getProductID()))
                .sorted(Comparator.comparing(PortIdentity::path))
                .toList();
    }

    @Override
    public Port open(String path, int baud) {
        SerialPort port;
        try {
            port = SerialPort.getCommPort(path);
        } catch (SerialPortInvalidPortException e) {
            throw new UnusableInputException(Refusal.missing(path, present()), e);
        }
        port.setComPortParameters(baud, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING | SerialPort.TIMEOUT_WRITE_BLOCKING, WAIT_MS, 0);
        // The error code is not zero after some openings that went well: only the answer itself is to be trusted.
        if (!port.openPort(0)) {
            throw new UnusableInputException(refused(path, port.getLastErrorCode()));
        }
        return new OpenPort(path, port, !isPseudoTerminal(port.getSystemPortPath()));
    }

    private static boolean isPseudoTerminal(String path) {
        try {
            return Path.of(path).toRealPath().startsWith(PSEUDO_TERMINALS);
        } catch (IOException | InvalidPathException e) {
            return false;
        }
    }

    private String refused(String path, int error) {
        try {
            Path file = Path.of(path);
            if (file.isAbsolute() && !Files.exists(file)) {
                return Refusal.missing(path, present());
            }
            boolean allowed = !file.isAbsolute() || (Files.isReadable(file) && Files.isWritable(file));
            return Refusal.of(path, allowed, WINDOWS, error);
        } catch (InvalidPathException e) {
            return Refusal.missing(path, present());
        }
    }
}

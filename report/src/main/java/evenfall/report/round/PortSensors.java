package evenfall.report.round;

import evenfall.ingest.recorder.ReadableWire;
import evenfall.ingest.serial.Link;
import evenfall.ingest.serial.PortOpener;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** Sensors at a port of the machine. Between turns the port is read and what comes is dropped, so that nothing old waits in it. */
public final class PortSensors implements Sensors {

    private static final int BUFFER = 4096;

    private final Link link;
    private @Nullable Thread idle;
    private volatile boolean resting;

    private PortSensors(Link link) {
        this.link = link;
        rest();
    }

    /**
     * Opens a port.
     *
     * @throws evenfall.ingest.recording.UnusableInputException if it is missing, in use, not allowed or no port
     */
    public static PortSensors open(PortOpener opener, String path) {
        return new PortSensors(Link.open(opener, path, OptionalInt.empty(), ReadableWire::new));
    }

    @Override
    public List<Link> begin() {
        resting = false;
        Thread thread = idle;
        if (thread != null) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        return List.of(link);
    }

    @Override
    public void rest() {
        resting = true;
        Thread thread = new Thread(this::drop, "idle port");
        thread.setDaemon(true);
        thread.start();
        idle = thread;
    }

    private void drop() {
        byte[] bytes = new byte[BUFFER];
        while (resting) {
            link.read(bytes);
        }
    }

    @Override
    public void close() {
        resting = false;
        link.close();
    }
}

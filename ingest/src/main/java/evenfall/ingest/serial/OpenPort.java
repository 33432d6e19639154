package evenfall.ingest.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;

/** A port of the serial library. */
final class OpenPort implements Port {

    private final String name;
    private final SerialPort port;
    private final boolean hasSpeed;
    private final AtomicBoolean closed = new AtomicBoolean();

    /**
     * An open port.
     *
     * @param name as a person names it
     * @param port open
     * @param hasSpeed whether its speed matters
     */
    OpenPort(String name, SerialPort port, boolean hasSpeed) {
        this.name = name;
        this.port = port;
        this.hasSpeed = hasSpeed;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public int read(byte[] into) {
        if (closed.get()) {
            return GONE;
        }
        int count = port.readBytes(into, into.length);
        if (count < 0) {
            // An unplugged port goes on calling itself open; it must be closed, and only once.
            close();
            return GONE;
        }
        return count;
    }

    @Override
    public void write(byte[] bytes, int from, int to) throws IOException {
        int at = from;
        while (at < to) {
            int count = closed.get() ? GONE : port.writeBytes(bytes, to - at, at);
            if (count < 0) {
                close();
                throw new IOException("The port " + name + " is gone; look at the cable and start again.");
            }
            at += count;
        }
    }

    @Override
    public boolean speed(int baud) {
        return hasSpeed && !closed.get() && port.setBaudRate(baud);
    }

    @Override
    public void close() {
        if (closed.compareAndSet(false, true)) {
            port.closePort();
        }
    }
}

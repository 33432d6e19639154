package evenfall.ingest.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;

/** A port of the serial library. */
final class OpenPort implements Port {

    private static final int IN_VAIN = 20;
    private static final long PAUSE_MS = 10;

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
        int inVain = 0;
        while (at < to) {
            int count = closed.get() ? GONE : port.writeBytes(bytes, to - at, at);
            // A lost port takes nothing, for ever, and does not say so.
            inVain = count == 0 ? inVain + 1 : 0;
            if (count < 0 || inVain == IN_VAIN) {
                close();
                throw new PortGoneException(name);
            }
            at += count;
            if (count == 0) {
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
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

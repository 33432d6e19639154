package evenfall.ingest.recorder;

import evenfall.ingest.serial.Port;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A port a test puts bytes into; it can be unplugged, which a pair of pseudo-terminals shows only roughly. */
final class FakePort implements Port {

    private static final byte[] UNPLUGGED = new byte[0];

    private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>();
    private volatile boolean closed;
    private volatile long goneMs = Long.MAX_VALUE;
    private volatile long backAtMs;

    void send(String text) {
        waiting.add(text.getBytes(StandardCharsets.US_ASCII));
    }

    void send(byte[] bytes) {
        waiting.add(bytes.clone());
    }

    void unplug() {
        waiting.add(UNPLUGGED);
    }

    /** Pulls the cable and plugs it in again. */
    void unplugFor(long milliseconds) {
        goneMs = milliseconds;
        unplug();
    }

    boolean closed() {
        return closed;
    }

    @Override
    public String name() {
        return "fake";
    }

    @Override
    public int read(byte[] into) {
        if (backAtMs > System.currentTimeMillis()) {
            return GONE;
        }
        try {
            byte[] bytes = waiting.poll(20, TimeUnit.MILLISECONDS);
            if (bytes == null) {
                return 0;
            }
            if (bytes == UNPLUGGED) {
                backAtMs = goneMs == Long.MAX_VALUE ? goneMs : System.currentTimeMillis() + goneMs;
                return GONE;
            }
            System.arraycopy(bytes, 0, into, 0, bytes.length);
            return bytes.length;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return GONE;
        }
    }

    @Override
    public void write(byte[] bytes, int from, int to) {
        throw new UnsupportedOperationException("sensors are not written to");
    }

    @Override
    public boolean speed(int baud) {
        return false;
    }

    @Override
    public void close() {
        closed = true;
    }
}

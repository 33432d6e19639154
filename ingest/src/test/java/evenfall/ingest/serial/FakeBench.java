package evenfall.ingest.serial;

import evenfall.ingest.recording.UnusableInputException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * A bench on which a test plugs devices in and out: real unplugging, other names and line speeds, which a pseudo-terminal
 * does not have.
 */
public final class FakeBench implements PortOpener {

    private final List<Device> devices = new ArrayList<>();

    /** A device at a path, plugged in. */
    public synchronized Device plug(String path, String serialNumber, int speed) {
        Device device = new Device(path, serialNumber, speed);
        devices.add(device);
        return device;
    }

    @Override
    public synchronized List<PortIdentity> present() {
        return devices.stream()
                .filter(device -> device.plugged)
                .map(device -> new PortIdentity(device.path, "receiver", device.serialNumber, 0x2341, 0x43))
                .sorted(Comparator.comparing(PortIdentity::path))
                .toList();
    }

    @Override
    public synchronized Port open(String path, int baud) {
        for (Device device : devices) {
            if (device.plugged && device.path.equals(path)) {
                if (device.taken != null) {
                    throw new UnusableInputException(Refusal.of(path, true, false, 16));
                }
                device.openings.add(path);
                Opened opened = new Opened(device, baud);
                device.taken = opened;
                return opened;
            }
        }
        throw new UnusableInputException(Refusal.missing(path, present()));
    }

    /** A sensor's receiver. What it sends while nobody has it open is lost, as on a real line. */
    public final class Device {

        private final String serialNumber;
        private final int speed;
        private final List<String> openings = new ArrayList<>();
        private String path;
        private boolean plugged = true;
        private @Nullable Opened taken;

        private Device(String path, String serialNumber, int speed) {
            this.path = path;
            this.serialNumber = serialNumber;
            this.speed = speed;
        }

        /** Sends; arrives as noise, a third longer or shorter, where the other side listens at another speed. */
        public void send(byte[] bytes) {
            synchronized (FakeBench.this) {
                if (taken != null) {
                    taken.waiting.add(speed == 0 || taken.speed == speed ? bytes.clone() : noise(bytes, taken.speed));
                }
            }
        }

        /** Pulls the cable. */
        public void unplug() {
            synchronized (FakeBench.this) {
                plugged = false;
                if (taken != null) {
                    taken.waiting.add(Opened.UNPLUGGED);
                    taken = null;
                }
            }
        }

        /** Plugs it in again. */
        public void plugAgain(String at) {
            synchronized (FakeBench.this) {
                path = at;
                plugged = true;
            }
        }

        /** Another program has it. */
        public void takenByAnother(boolean isTaken) {
            synchronized (FakeBench.this) {
                taken = isTaken ? new Opened(this, speed) : null;
            }
        }

        /** Whether somebody has it open. */
        public boolean isOpen() {
            synchronized (FakeBench.this) {
                return taken != null;
            }
        }

        /** Where it was opened so far. */
        public List<String> openings() {
            synchronized (FakeBench.this) {
                return List.copyOf(openings);
            }
        }

        private byte[] noise(byte[] bytes, int heardAt) {
            byte[] noise = new byte[Math.max(1, heardAt > speed ? bytes.length * 4 / 3 : bytes.length * 2 / 3)];
            for (int i = 0; i < noise.length; i++) {
                noise[i] = (byte) ((bytes[i % bytes.length] * 37 + i * 101) | 0x80);
            }
            return noise;
        }
    }

    private final class Opened implements Port {

        private static final byte[] UNPLUGGED = new byte[0];

        private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>();
        private final Device device;
        private volatile int speed;
        private volatile boolean gone;
        private byte @Nullable [] rest;

        Opened(Device device, int speed) {
            this.device = device;
            this.speed = speed;
        }

        @Override
        public String name() {
            return device.path;
        }

        @Override
        public int read(byte[] into) {
            if (gone) {
                return GONE;
            }
            try {
                byte[] bytes = rest != null ? rest : waiting.poll(20, TimeUnit.MILLISECONDS);
                rest = null;
                if (bytes == null) {
                    return 0;
                }
                if (bytes == UNPLUGGED) {
                    gone = true;
                    return GONE;
                }
                int count = Math.min(bytes.length, into.length);
                System.arraycopy(bytes, 0, into, 0, count);
                if (count < bytes.length) {
                    rest = Arrays.copyOfRange(bytes, count, bytes.length);
                }
                return count;
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
            speed = baud;
            return device.speed != 0;
        }

        @Override
        public void close() {
            synchronized (FakeBench.this) {
                gone = true;
                if (device.taken == this) {
                    device.taken = null;
                }
            }
        }
    }
}

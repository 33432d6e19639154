package evenfall.ingest.serial;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.LinkState.Search;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A port that is found again after it was lost: at the same path, or the same device at another one. While it is not there
 * {@link #read} gives {@link Port#GONE} and tries it every {@value #RETRY_MS} ms. Its speed is looked for where none is said.
 *
 * <p>One thread reads; the state may be asked, and the link closed, from any.
 */
public final class Link implements Port {

    /** A lost port is tried again so often, ms. */
    public static final long RETRY_MS = 500;

    private static final long SLICE_MS = 50;
    private static final String NO_TROUBLE = "";

    private final PortOpener opener;
    private final String name;
    private final Object lock = new Object();
    private @Nullable SpeedSearch search;
    private byte[] held = new byte[0];
    private int heldFrom;
    private long triedMs;

    private volatile @Nullable Port port;
    private volatile @Nullable PortIdentity device;
    private volatile String path;
    private volatile boolean closed;
    private volatile int losses;
    private final AtomicLong bytes = new AtomicLong();
    private volatile int speed;
    private volatile Search found;
    private volatile String trouble = NO_TROUBLE;

    private Link(PortOpener opener, String path, OptionalInt baud, Supplier<SpeedJudge> judges) {
        this.opener = opener;
        this.name = path;
        this.path = path;
        this.speed = baud.orElse(SerialPorts.USUAL_BAUD);
        this.found = baud.isPresent() ? Search.SAID : Search.GOING_ON;
        this.search = baud.isPresent() ? null : new SpeedSearch(judges);
    }

    /**
     * Opens a link.
     *
     * @param path such as {@code /dev/ttyACM0} or {@code COM3}
     * @param baud speed, bits a second; empty to look for it
     * @param judges make one who says whether what comes is readable, by which a speed is known to be right
     * @throws UnusableInputException if it is missing, in use, not allowed or no port
     */
    public static Link open(PortOpener opener, String path, OptionalInt baud, Supplier<SpeedJudge> judges) {
        Link link = new Link(opener, path, baud, judges);
        link.begin(opener.open(path, link.speed), path);
        return link;
    }

    /** How it stands now. */
    public LinkState state() {
        return new LinkState(name, path, port != null, losses, bytes.get(), speed, found, trouble);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public int read(byte[] into) {
        if (heldFrom < held.length) {
            return handOver(into);
        }
        Port open = port;
        if (open == null) {
            tryAgain();
            return port == null ? GONE : 0;
        }
        int count = open.read(into);
        if (count == GONE) {
            lose(open);
            return GONE;
        }
        bytes.addAndGet(count);
        SpeedSearch going = search;
        return going == null ? count : searched(going, open, into, count);
    }

    @Override
    public void write(byte[] bytes, int from, int to) throws IOException {
        Port open = port;
        if (open == null) {
            throw new PortGoneException(name);
        }
        open.write(bytes, from, to);
    }

    @Override
    public boolean speed(int baud) {
        Port open = port;
        return open != null && open.speed(baud);
    }

    @Override
    public void close() {
        synchronized (lock) {
            closed = true;
            Port open = port;
            if (open != null) {
                open.close();
            }
        }
    }

    private void begin(Port opened, String at) {
        synchronized (lock) {
            if (closed) {
                opened.close();
                return;
            }
            path = at;
            trouble = NO_TROUBLE;
            port = opened;
        }
        device = identity(at, opener.present()).orElse(device);
        if (search != null && !opened.speed(speed)) {
            search = null;
            found = Search.NONE;
        }
    }

    private int searched(SpeedSearch going, Port open, byte[] into, int count) {
        long now = now();
        if (count > 0 && going.heard(into, count, now)) {
            found = Search.FOUND;
            held = going.held();
            heldFrom = 0;
            search = null;
            return handOver(into);
        }
        if (going.over(now)) {
            speed = going.speed();
            found = going.inVain() ? Search.IN_VAIN : Search.GOING_ON;
            open.speed(speed);
        }
        return 0;
    }

    private int handOver(byte[] into) {
        int count = Math.min(into.length, held.length - heldFrom);
        System.arraycopy(held, heldFrom, into, 0, count);
        heldFrom += count;
        if (heldFrom == held.length) {
            held = new byte[0];
            heldFrom = 0;
        }
        return count;
    }

    private void lose(Port open) {
        open.close();
        synchronized (lock) {
            port = null;
            losses += closed ? 0 : 1;
        }
        triedMs = now();
    }

    /** Tries the port anew when it is time; until then waits a little. */
    private void tryAgain() {
        long wait = triedMs + RETRY_MS - now();
        if (wait > 0 || closed) {
            pause(closed ? SLICE_MS : Math.min(wait, SLICE_MS));
            return;
        }
        List<PortIdentity> present = opener.present();
        String why = NO_TROUBLE;
        for (String candidate : candidates(present)) {
            try {
                begin(opener.open(candidate, speed), candidate);
                return;
            } catch (UnusableInputException e) {
                why = isThere(candidate, present) ? String.valueOf(e.getMessage()) : why;
            }
        }
        trouble = why;
        triedMs = now();
    }

    /** Where the port may be now: at its path, unless another device is there, and wherever the same device is. */
    private List<String> candidates(List<PortIdentity> present) {
        PortIdentity mine = device;
        List<String> candidates = new ArrayList<>();
        if (mine == null || identity(name, present).map(mine::sameDevice).orElse(true)) {
            candidates.add(name);
        }
        for (PortIdentity there : present) {
            if (mine != null && there.sameDevice(mine) && !candidates.contains(there.path())) {
                candidates.add(there.path());
            }
        }
        return candidates;
    }

    private static Optional<PortIdentity> identity(String at, List<PortIdentity> present) {
        String real = real(at);
        return present.stream()
                .filter(there -> there.path().equals(at) || there.path().equals(real))
                .findFirst();
    }

    private static boolean isThere(String at, List<PortIdentity> present) {
        try {
            return identity(at, present).isPresent() || Files.exists(Path.of(at));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** The path a link in the file system leads to now. */
    private static String real(String at) {
        try {
            return Path.of(at).toRealPath().toString();
        } catch (IOException | InvalidPathException e) {
            return at;
        }
    }

    private static long now() {
        return System.nanoTime() / 1_000_000;
    }

    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

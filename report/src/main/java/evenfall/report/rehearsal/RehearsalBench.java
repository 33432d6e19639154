package evenfall.report.rehearsal;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.ingest.serial.Port;
import evenfall.ingest.serial.PortIdentity;
import evenfall.ingest.serial.PortOpener;
import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A port inside the program at whose other end a rehearsal plays, so that everything behind the port works as with sensors.
 * It begins to play when it is first opened. While it is unplugged the sensors go on and what they say is lost; when the
 * rehearsal is over they are silent.
 */
public final class RehearsalBench implements PortOpener {

    /** Under this path the port is found. */
    public static final String PATH = "rehearsal";

    private static final int MOST_AT_ONCE = 64;

    private final Playback playback;
    private final Supplier<Pace> begin;
    private final Object lock = new Object();
    private byte[] waiting = new byte[0];
    private int waitingFrom;
    private @Nullable Pace pace;
    private volatile boolean plugged = true;

    /**
     * A bench on which {@code playback} waits to begin.
     *
     * @param begin begins to count its time
     */
    public RehearsalBench(Playback playback, Supplier<Pace> begin) {
        this.playback = playback;
        this.begin = begin;
    }

    /** Pulls the plug. */
    public void unplug() {
        plugged = false;
    }

    /** Puts the plug in again. */
    public void plug() {
        plugged = true;
    }

    /** Whether all was played and read. */
    public boolean ended() {
        synchronized (lock) {
            return playback.ended() && waitingFrom == waiting.length;
        }
    }

    @Override
    public Port open(String path, int baud) {
        if (!PATH.equals(path) || !plugged) {
            throw new UnusableInputException(
                    path + " is not there: a rehearsal has one port, '" + PATH + "', while it is plugged in.");
        }
        synchronized (lock) {
            if (pace == null) {
                pace = begin.get();
            } else {
                miss(pace.nowS());
            }
            return new End(pace);
        }
    }

    @Override
    public List<PortIdentity> present() {
        return plugged ? List.of(new PortIdentity(PATH, "", "", -1, -1)) : List.of();
    }

    /** What was said while nobody could hear it is lost. */
    private void miss(double untilS) {
        waitingFrom = waiting.length;
        boolean more = true;
        while (more) {
            more = playback.due(untilS, MOST_AT_ONCE).length > 0;
        }
    }

    /** The end that the program holds. */
    private final class End implements Port {

        private final Pace pace;
        private volatile boolean open = true;

        End(Pace pace) {
            this.pace = pace;
        }

        @Override
        public String name() {
            return PATH;
        }

        @Override
        public int read(byte[] into) {
            if (!open || !plugged) {
                return GONE;
            }
            int count = take(into);
            if (count == 0) {
                rest();
            }
            return count;
        }

        private int take(byte[] into) {
            synchronized (lock) {
                if (waitingFrom == waiting.length) {
                    waiting = playback.due(pace.nowS(), MOST_AT_ONCE);
                    waitingFrom = 0;
                }
                int count = Math.min(into.length, waiting.length - waitingFrom);
                System.arraycopy(waiting, waitingFrom, into, 0, count);
                waitingFrom += count;
                return count;
            }
        }

        private void rest() {
            try {
                pace.rest();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void write(byte[] bytes, int from, int to) throws IOException {
            if (!open || !plugged) {
                throw new IOException(PATH + " is not there any more; nothing was written.");
            }
        }

        @Override
        public boolean speed(int baud) {
            return false;
        }

        @Override
        public void close() {
            open = false;
        }
    }
}

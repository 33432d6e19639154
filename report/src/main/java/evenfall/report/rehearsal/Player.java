package evenfall.report.rehearsal;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.serial.Port;
import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Sends a rehearsal's bytes onto a port when they are due. While the port is unplugged the sensors go on, and what they
 * say is lost.
 */
public final class Player {

    private static final int MOST_AT_ONCE = 256;

    private final Playback playback;
    private final List<Stretch> unplugged;
    private final Supplier<Port> opener;
    private final Pace pace;

    /**
     * A player.
     *
     * @param unplugged when the port is closed
     * @param opener opens the port; asked again after each time it was unplugged
     */
    public Player(Playback playback, List<Stretch> unplugged, Supplier<Port> opener, Pace pace) {
        this.playback = playback;
        this.unplugged = List.copyOf(unplugged);
        this.opener = opener;
        this.pace = pace;
    }

    /**
     * Plays to the end and leaves the port open for what is still on its way.
     *
     * @return the port, to be closed; null if it is unplugged at the end
     * @throws IOException if the port is gone, with a sentence for a person
     */
    public @Nullable Port play(Progress progress) throws IOException, InterruptedException {
        double durationS = playback.durationS();
        Port port = null;
        boolean done = false;
        try {
            while (!playback.ended()) {
                double nowS = pace.nowS();
                boolean away = FaultyLine.within(unplugged, nowS);
                if (away && port != null) {
                    port.close();
                    port = null;
                } else if (!away && port == null) {
                    port = opener.get();
                }
                byte[] bytes = playback.due(nowS, MOST_AT_ONCE);
                if (bytes.length > 0 && port != null) {
                    port.write(bytes, 0, bytes.length);
                    progress.at("sending", durationS > 0 ? Math.min(1, nowS / durationS) : 1);
                }
                if (bytes.length == 0) {
                    pace.rest();
                }
            }
            done = true;
            return port;
        } finally {
            if (!done && port != null) {
                port.close();
            }
        }
    }
}

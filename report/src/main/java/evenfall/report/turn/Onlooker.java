package evenfall.report.turn;

import evenfall.ingest.recorder.WireRecorder;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.LiveLandings.News;
import java.io.IOException;

/** Whoever looks on while a turn is recorded. Called from the thread that records. */
public interface Onlooker {

    /** What something that is said is about. */
    enum Topic {
        /** Ports, sensors, disk, log, and what was asked for. */
        RECORDING,
        /** Where sensors are worn. */
        PLACE,
        /** The opening routine. */
        ROUTINE,
        /** Landings and falls. */
        LANDING,
        /** A session that is over and stored. */
        STORED
    }

    /** A sentence for a person to read. */
    void told(Topic topic, String sentence);

    /** Landings and falls that are new. */
    void came(News news) throws IOException;

    /** How things stand, 25 times a second. */
    default void looked(double nowS, WireRecorder recorder, LiveLandings live) throws IOException {}
}

package evenfall.report.round;

import evenfall.ingest.serial.Link;
import java.util.List;

/** The one pair of sensors, wherever it comes from. */
public interface Sensors extends AutoCloseable {

    /** Hands them to a turn that begins; waits for nobody. */
    List<Link> begin();

    /** A turn is over: what they say meanwhile is nobody's. */
    void rest();

    @Override
    void close();
}

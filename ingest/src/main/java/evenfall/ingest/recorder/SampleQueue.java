package evenfall.ingest.recorder;

import evenfall.ingest.place.Place;
import evenfall.ingest.wire.SampleReceiver;
import java.util.Arrays;

/**
 * Samples on their way from those who decode to the one who looks on. Adding takes no longer when nobody has looked for a
 * while, and looking takes no longer late in a session than early. Safe for use from several threads.
 */
final class SampleQueue implements SampleReceiver {

    /** More than this wait for nobody: five minutes of two sensors at 400 Hz. */
    static final int MOST = 1 << 18;

    private static final int WIDTH = 7;
    private static final int FIRST = 1 << 10;

    /** Held by the one who looks while samples are handed over. */
    private final Object looking = new Object();

    private Rows waiting = new Rows();
    private Rows handed = new Rows();
    private long missed;

    @Override
    public synchronized void sample(
            Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        if (waiting.size == MOST) {
            missed++;
        } else {
            waiting.add(place, timeS, ax, ay, az, gx, gy, gz);
        }
    }

    /** Hands over all that waits, in order of arrival; says how many samples that were. */
    int drainTo(SampleReceiver receiver) {
        synchronized (looking) {
            synchronized (this) {
                Rows full = waiting;
                waiting = handed;
                handed = full;
            }
            return handed.empty(receiver);
        }
    }

    /** Samples that were not kept for the one who looks on, since he did not look for too long. */
    synchronized long missed() {
        return missed;
    }

    private static final class Rows {

        private double[] values = new double[WIDTH * FIRST];
        private Place[] places = new Place[FIRST];
        private int size;

        void add(Place place, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
            if (size == places.length) {
                places = Arrays.copyOf(places, 2 * size);
                values = Arrays.copyOf(values, 2 * WIDTH * size);
            }
            places[size] = place;
            int at = WIDTH * size++;
            values[at] = timeS;
            values[at + 1] = ax;
            values[at + 2] = ay;
            values[at + 3] = az;
            values[at + 4] = gx;
            values[at + 5] = gy;
            values[at + 6] = gz;
        }

        int empty(SampleReceiver receiver) {
            for (int i = 0; i < size; i++) {
                int at = WIDTH * i;
                receiver.sample(
                        places[i],
                        values[at],
                        values[at + 1],
                        values[at + 2],
                        values[at + 3],
                        values[at + 4],
                        values[at + 5],
                        values[at + 6]);
            }
            int count = size;
            size = 0;
            return count;
        }
    }
}

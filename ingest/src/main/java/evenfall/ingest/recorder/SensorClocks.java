package evenfall.ingest.recorder;

import evenfall.ingest.wire.Hello;
import evenfall.ingest.wire.WireReceiver;
import java.util.ArrayList;
import java.util.List;

/**
 * The clocks of the sensors on one port. A sensor that starts anew begins to count at nothing: it is put where its samples
 * arrived, so that time before and after stay tied. A clock that went on while the port was gone is left as it is.
 *
 * <p>How late samples arrive is taken as the least of late, so that a piece that was held up does not count. Not safe for
 * use from several threads.
 */
final class SensorClocks implements WireReceiver {

    /** Clocks and arrivals that differ by more tell of a new start, s. */
    static final double NEW_START_S = 1;

    /** No clock of a sensor gains or loses more than this of a second in a second; common practice, no source. */
    private static final double DRIFT = 2e-4;

    /** Samples that were kept back and sent later follow the ones before so closely, s. */
    private static final double FOLLOWS_S = 0.5;

    /** A clock that is further ahead of its arrivals after a loss is another sensor's: no rehearsal plays so fast. */
    private static final double AHEAD_S = 60;

    private static final double AHEAD = 10;

    private final WireReceiver receiver;
    private final List<Clock> clocks = new ArrayList<>();
    private final List<NewStart> newStarts = new ArrayList<>();
    private double arrivalS = Double.NaN;
    private double goneS = Double.NaN;

    /** Hands samples on to {@code receiver}. */
    SensorClocks(WireReceiver receiver) {
        this.receiver = receiver;
    }

    /**
     * A sensor that started anew.
     *
     * @param sensor its number
     * @param clockS time of its first sample after that as handed on, s
     */
    record NewStart(int sensor, double clockS) {}

    /** Says when the bytes that follow arrived, s since any moment. */
    void arrived(double seconds) {
        arrivalS = seconds;
        for (Clock clock : clocks) {
            clock.fresh = true;
        }
    }

    /** Says when the port was lost, s since the same moment. */
    void gone(double seconds) {
        goneS = seconds;
        for (Clock clock : clocks) {
            clock.parted = true;
        }
    }

    /** Time of the last sample of a sensor as handed on, s; NaN if it has not spoken here. */
    double last(int wanted) {
        for (Clock clock : clocks) {
            if (clock.sensor == wanted) {
                return clock.rawS + clock.shiftS;
            }
        }
        return Double.NaN;
    }

    /** Sensors that started anew and were put in place, in order. */
    List<NewStart> newStarts() {
        return List.copyOf(newStarts);
    }

    @Override
    public void sample(int sensor, double timeS, double ax, double ay, double az, double gx, double gy, double gz) {
        double time = clock(sensor).place(timeS);
        receiver.sample(sensor, time, ax, ay, az, gx, gy, gz);
    }

    @Override
    public void hello(Hello hello) {
        receiver.hello(hello);
    }

    @Override
    public void lost(int sensor, long samples) {
        receiver.lost(sensor, samples);
    }

    private Clock clock(int sensor) {
        for (Clock clock : clocks) {
            if (clock.sensor == sensor) {
                return clock;
            }
        }
        Clock clock = new Clock(sensor);
        clocks.add(clock);
        return clock;
    }

    private final class Clock {

        private final int sensor;
        private boolean begun;
        private boolean fresh = true;
        private boolean parted;
        private double rawS;
        private double shiftS;
        private double lateS = Double.NaN;
        private double measuredS;

        Clock(int sensor) {
            this.sensor = sensor;
        }

        double place(double timeS) {
            if (begun && startedAnew(timeS)) {
                double last = rawS + shiftS;
                shiftS = Math.max(last, arrivalS - lateS) - timeS;
                newStarts.add(new NewStart(sensor, timeS + shiftS));
            }
            begun = true;
            parted = false;
            rawS = timeS;
            measure(timeS + shiftS);
            return timeS + shiftS;
        }

        private boolean startedAnew(double timeS) {
            if (Double.isNaN(lateS) || Double.isNaN(arrivalS)) {
                return false;
            }
            if (timeS < rawS - NEW_START_S) {
                return true;
            }
            if (timeS < rawS + FOLLOWS_S || !parted) {
                return false;
            }
            double tooLate = arrivalS - lateS - (timeS + shiftS);
            double away = arrivalS - goneS;
            // It may have been off and on again so long ago that it counts beyond where it was; or another one is worn
            // now.
            return (tooLate > NEW_START_S && timeS < away + NEW_START_S) || -tooLate > AHEAD_S + AHEAD * away;
        }

        private void measure(double timeS) {
            if (fresh && !Double.isNaN(arrivalS)) {
                fresh = false;
                double late = arrivalS - timeS;
                lateS = Double.isNaN(lateS) ? late : Math.min(late, lateS + DRIFT * (arrivalS - measuredS));
                measuredS = arrivalS;
            }
        }
    }
}

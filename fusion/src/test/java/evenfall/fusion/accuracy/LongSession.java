package evenfall.fusion.accuracy;

import evenfall.fixtures.motion.LandingPlan;
import evenfall.fixtures.motion.LandingQuantity;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.session.SessionScript;
import evenfall.fixtures.session.SyntheticSession;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.recording.SensorRecording;
import evenfall.ingest.recording.SensorStream;
import java.util.List;

/** A session of any length that grows: an opening, then the same three landings over and over. */
public final class LongSession {

    private final Looped pelvis;
    private final Looped upperBack;

    /** A session of two sensors of so many samples a second. */
    public LongSession(double rateHz) {
        SessionScript script = SessionScript.cheapSensors(3)
                .pelvisSensor(SensorModel.cheap(rateHz, 4))
                .upperBackSensor(SensorModel.cheap(rateHz, 5))
                .openingRoutine()
                .stand(4);
        double from = script.now() - 2;
        SyntheticSession session = script.drop(LandingPlan.fromHeight(0.6))
                .stand(4)
                .walk(4)
                .stand(3)
                .drop(LandingPlan.fromHeight(0.9).with(LandingQuantity.TRUNK_LEAN, 6))
                .stand(4)
                .walk(4)
                .stand(3)
                .drop(LandingPlan.fromHeight(0.4).with(LandingQuantity.SPINE_FLEXION, 15))
                .stand(8)
                .record();
        double to = script.now() - 4;
        this.pelvis = new Looped(session.pelvis(), from, to);
        this.upperBack = new Looped(session.upperBack(), from, to);
    }

    /** Adds what comes until a moment and gives the session so far. */
    public Recording until(double timeS) {
        return new Recording(pelvis.until(timeS), upperBack.until(timeS));
    }

    /** One sensor's samples; both begin within a moment of one another. */
    private static final class Looped {

        private final SensorSignals signals;
        private final int from;
        private final int length;
        private final double period;
        private final SensorStream.Builder builder = new SensorStream.Builder();

        Looped(SensorSignals signals, double fromS, double toS) {
            this.signals = signals;
            this.from = index(fromS);
            this.length = index(toS) - from;
            this.period = signals.time()[from + length] - signals.time()[from];
        }

        private int index(double sinceStart) {
            int i = 0;
            while (signals.time()[i] - signals.time()[0] < sinceStart) {
                i++;
            }
            return i;
        }

        private int place(int i) {
            return i < from ? i : from + (i - from) % length;
        }

        private double time(int i) {
            int round = i < from ? 0 : (i - from) / length;
            return signals.time()[place(i)] + round * period;
        }

        SensorRecording until(double sinceStart) {
            for (int i = builder.size(); i == 0 || time(i) - time(0) <= sinceStart; i = builder.size()) {
                int k = place(i);
                builder.add(
                        time(i),
                        signals.acceleration(0)[k],
                        signals.acceleration(1)[k],
                        signals.acceleration(2)[k],
                        signals.turnRate(0)[k],
                        signals.turnRate(1)[k],
                        signals.turnRate(2)[k]);
            }
            return new SensorRecording("synthetic", builder.soFar(), null, List.of());
        }
    }
}

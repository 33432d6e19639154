package evenfall.fusion.accuracy;

import evenfall.fixtures.sensor.AxisErrors;
import evenfall.fixtures.sensor.SensorModel;
import evenfall.fixtures.sensor.SensorSignals;
import evenfall.fixtures.truth.AngleTruth;
import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.LandingTruth;
import java.util.EnumMap;
import java.util.Map;

/** Turns what the synthesiser says of a landing into the common form. */
final class SyntheticTruth {

    private static final double GRAVITY = 9.80665;
    private static final double PEAK_BEFORE_S = 0.005;
    private static final double PEAK_AFTER_S = 0.25;
    /** The bodies sway by less, deg, which may be as far to the one side as to the other. */
    private static final double SWAY_DEG = 1;

    private SyntheticTruth() {}

    /** One landing as the pelvis sensor could see it. */
    static TrueLanding landing(LandingTruth motionTime, SensorModel pelvis, SensorSignals signals) {
        LandingTruth t = motionTime.onClock(pelvis.clock());
        double start = signals.time()[0];
        return new TrueLanding(
                t.contactS() - start,
                t.flightS(),
                t.lowestS() - start,
                t.settledS() == null ? null : t.settledS() - start,
                t.impactSpeedMS(),
                t.depthM(),
                recordedPeak(signals, t.contactS()),
                t.peakG(),
                clipped(signals, t.contactS(), pelvis.accelerometer()),
                t.collapseDegPerS(),
                angles(t),
                t.foreAftShiftM(),
                t.lateralShiftM(),
                t.overFeet(),
                t.stepsAfter() > 0);
    }

    static Map<BodyAngle, TrueLanding.Angle> angles(LandingTruth t) {
        Map<BodyAngle, TrueLanding.Angle> angles = new EnumMap<>(BodyAngle.class);
        for (BodyAngle which : BodyAngle.values()) {
            angles.put(which, angle(t.angle(which)));
        }
        return angles;
    }

    private static TrueLanding.Angle angle(AngleTruth t) {
        double change = t.change();
        if (Math.abs(change) < SWAY_DEG) {
            return new TrueLanding.Angle(t.contact(), Math.abs(change), -Math.abs(change));
        }
        return new TrueLanding.Angle(t.contact(), Math.max(0, change), Math.min(0, change));
    }

    private static double recordedPeak(SensorSignals s, double contactS) {
        double most = 0;
        for (int i = 0; i < s.size(); i++) {
            if (s.time()[i] >= contactS - PEAK_BEFORE_S && s.time()[i] <= contactS + PEAK_AFTER_S) {
                double x = s.acceleration(0)[i];
                double y = s.acceleration(1)[i];
                double z = s.acceleration(2)[i];
                most = Math.max(most, Math.sqrt(x * x + y * y + z * z));
            }
        }
        return most / GRAVITY;
    }

    private static boolean clipped(SensorSignals s, double contactS, AxisErrors errors) {
        double limit = errors.range() - 1.5 * errors.step();
        for (int i = 0; i < s.size(); i++) {
            if (s.time()[i] >= contactS - PEAK_BEFORE_S && s.time()[i] <= contactS + PEAK_AFTER_S) {
                for (int axis = 0; axis < 3; axis++) {
                    if (Math.abs(s.acceleration(axis)[i]) >= limit) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}

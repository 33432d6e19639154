package evenfall.fusion.accuracy;

import evenfall.fixtures.truth.BodyAngle;
import evenfall.fixtures.truth.OverFeetTruth;
import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.Estimate;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Sigma;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Errors of each figure against a truth, with the sigma that was stated for it where there is one. */
final class LandingErrors {

    /** A landing is the true one if their contacts lie this near, s. */
    private static final double NEAR_S = 0.2;

    /** One error; NaN where nothing was measured, sigma NaN where none is stated. */
    record One(double error, double sigma) {}

    private final Map<Figure, List<One>> errors = new EnumMap<>(Figure.class);

    /** All of an analysis, without its clock. */
    static LandingErrors of(RecordingAnalysis analysis, List<TrueLanding> truths) {
        return of(analysis.landings(), truths);
    }

    /** All of these landings. */
    static LandingErrors of(List<Landing> landings, List<TrueLanding> truths) {
        LandingErrors all = new LandingErrors();
        for (Landing landing : landings) {
            for (TrueLanding truth : truths) {
                if (Math.abs(truth.contactS() - landing.moments().contactS()) < NEAR_S && landing.measures() != null) {
                    all.add(landing, landing.measures(), truth);
                }
            }
        }
        all.put(Figure.LANDINGS, (double) landings.size(), truths.size(), null);
        return all;
    }

    static LandingErrors together(Collection<LandingErrors> parts) {
        LandingErrors all = new LandingErrors();
        for (LandingErrors part : parts) {
            part.errors.forEach((figure, list) -> all.of(figure).addAll(list));
        }
        return all;
    }

    /** The errors of a figure; none if it was never met. */
    List<One> of(Figure figure) {
        return errors.computeIfAbsent(figure, k -> new ArrayList<>());
    }

    ErrorSummary summary(Figure figure) {
        return ErrorSummary.of(of(figure));
    }

    void put(Figure figure, @Nullable Double value, double truth, @Nullable Double sigma) {
        of(figure).add(new One(value == null ? Double.NaN : value - truth, sigma == null ? Double.NaN : sigma));
    }

    /** The clock map against the true one at five moments of a recording. */
    void addClock(RecordingAnalysis analysis, DoubleUnaryOperator pelvisToUpperBack) {
        ClockMap clock = analysis.clock();
        for (int k = 0; clock != null && k < 5; k++) {
            double t = k * analysis.durationS() / 4;
            double error = 1000 * (clock.toUpperBack(t) - pelvisToUpperBack.applyAsDouble(t));
            put(Figure.CLOCK, error, 0, clock.sigmaMs());
        }
    }

    private void add(Landing landing, Measures m, TrueLanding t) {
        Sigma sigma = m.sigma();
        Fall fall = m.fall();
        put(Figure.CONTACT, landing.moments().contactS(), t.contactS(), sigma.contactS());
        put(Figure.FLIGHT, fall.flightS(), t.flightS(), sigma.flightS());
        put(Figure.LOWEST, landing.moments().lowestS(), t.lowestS(), null);
        if (t.settledS() != null) {
            put(Figure.SETTLED, landing.moments().settledS(), t.settledS(), null);
        }
        put(Figure.SPEED, fall.impactSpeedMS(), t.speedMS(), sigma.impactSpeedMS());
        put(Figure.DROP, fall.dropHeightM(), t.dropM(), sigma.dropHeightM());
        put(Figure.DEPTH, m.braking().depthM(), t.depthM(), sigma.depthM());
        put(Figure.BRAKING, m.braking().meanBrakingG(), t.brakingG(), null);
        put(Figure.PEAK, 100 * (m.impact().peakG() / t.recordedPeakG() - 1), 0, null);
        if (!t.clipped()) {
            put(
                    Figure.BODY_PEAK,
                    100 * (m.impact().peakG() / t.bodyPeakG() - 1),
                    0,
                    100 * sigma.peakG() / t.bodyPeakG());
        }
        put(Figure.CLIPPED, m.impact().clipped() ? 1.0 : 0.0, t.clipped() ? 1 : 0, null);
        put(Figure.COLLAPSE, m.braking().collapseDegPerS(), t.collapseDegPerS(), sigma.collapseDegPerS());
        addAngles(m.posture(), t);
        addBalance(m, t);
    }

    private void addAngles(Posture p, TrueLanding t) {
        change(Figure.ROTATION, p.pelvicRotation(), t.angle(BodyAngle.PELVIC_ROTATION));
        change(Figure.OBLIQUITY, p.pelvicObliquity(), t.angle(BodyAngle.PELVIC_OBLIQUITY));
        change(Figure.TILT, p.pelvicTilt(), t.angle(BodyAngle.PELVIC_TILT));
        change(Figure.FLEXION, p.trunkFlexion(), t.angle(BodyAngle.TRUNK_FLEXION));
        change(Figure.LEAN, p.trunkLean(), t.angle(BodyAngle.TRUNK_LEAN));
        change(Figure.TWIST, p.twist(), t.angle(BodyAngle.TWIST));
        change(Figure.SPINE, p.spineFlexion(), t.angle(BodyAngle.SPINE_FLEXION));
        atContact(Figure.TILT_AT_CONTACT, p.pelvicTilt(), t.angle(BodyAngle.PELVIC_TILT));
        atContact(Figure.OBLIQUITY_AT_CONTACT, p.pelvicObliquity(), t.angle(BodyAngle.PELVIC_OBLIQUITY));
        atContact(Figure.FLEXION_AT_CONTACT, p.trunkFlexion(), t.angle(BodyAngle.TRUNK_FLEXION));
        atContact(Figure.LEAN_AT_CONTACT, p.trunkLean(), t.angle(BodyAngle.TRUNK_LEAN));
    }

    private void change(Figure figure, @Nullable Excursion e, TrueLanding.Angle t) {
        put(figure, e == null ? null : e.change(), e == null ? 0 : t.change(e.change()), e == null ? null : e.sigma());
        if (e != null) {
            put(Figure.OTHER_SIDE, t.change(e.change()) == t.farther() ? 0.0 : 1.0, 0, null);
        }
    }

    private void atContact(Figure figure, @Nullable Excursion e, TrueLanding.Angle t) {
        put(figure, e == null ? null : e.contact(), t.contact(), null);
    }

    private void addBalance(Measures m, TrueLanding t) {
        put(Figure.SHIFT_LEFT, m.balance().lateralShift(), t.shiftLeftM());
        put(Figure.SHIFT_FORWARD, m.balance().foreAftShift(), t.shiftForwardM());
        OverFeet feet = m.balance().overFeet();
        OverFeetTruth over = t.overFeet();
        put(Figure.FEET_MOVED, feet == null ? 1.0 : 0.0, over == null ? 1 : 0, null);
        if (feet != null && over != null) {
            put(Figure.OVER_FORWARD, feet.foreAftContact(), over.foreAftContact(), feet.sigmaForeAft());
            put(Figure.OVER_LEFT, feet.lateralContact(), over.lateralContact(), feet.sigmaLateral());
            if (!Double.isNaN(over.foreAftLowest())) {
                put(Figure.OVER_FORWARD_LOW, feet.foreAftLowest(), over.foreAftLowest(), feet.sigmaForeAft());
                put(Figure.OVER_LEFT_LOW, feet.lateralLowest(), over.lateralLowest(), feet.sigmaLateral());
            }
        }
        Integer steps = m.balance().stepsAfter();
        put(Figure.STEPPED, steps == null ? null : steps > 0 ? 1.0 : 0.0, t.stepped() ? 1 : 0, null);
    }

    private void put(Figure figure, @Nullable Estimate e, double truth) {
        put(figure, e == null ? null : e.value(), truth, e == null ? null : e.sigma());
    }
}

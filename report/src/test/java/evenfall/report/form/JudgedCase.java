package evenfall.report.form;

import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Side;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.landing.StepDirection;
import org.jspecify.annotations.Nullable;

/** A landing well within limits, of which single measures are set. */
final class JudgedCase {
    double braking = 3;
    double rotation = 1;
    double obliquity = 1;
    double lean = 1;
    double twist = 1;
    double tilt = 1;
    double spine = 10;
    double collapse = 100;
    double foreAft = -0.02;
    double lateral = 0.01;
    int steps;
    double sigma = 0.01;
    boolean overFeet = true;
    boolean clipped;
    double peak = 8.4;
    double height = 0.78;
    double heightSigma = 0.001;

    @Nullable Side foot;

    @Nullable StepDirection direction = StepDirection.BACK;

    JudgedCase with(String measure, double value) {
        switch (measure) {
            case "meanBrakingG" -> braking = value;
            case "pelvicRotationDeg.change" -> rotation = value;
            case "pelvicObliquityDeg.change" -> obliquity = value;
            case "trunkLeanDeg.change" -> lean = value;
            case "twistDeg.change" -> twist = value;
            case "pelvicTiltDeg.change" -> tilt = value;
            case "spineFlexionDeg.change" -> spine = value;
            case "collapseDegPerS" -> collapse = value;
            case "overFeetM.foreAftLowest" -> foreAft = value;
            case "overFeetM.lateralLowest" -> lateral = value;
            case "peakG" -> peak = value;
            case "dropHeightM" -> height = value;
            case "stepsAfter" -> steps = (int) value;
            default -> throw new IllegalArgumentException(measure);
        }
        return this;
    }

    Measures measures() {
        return new Measures(
                new Fall(0.4, 3.9, height),
                new Impact(peak, 6.1, clipped, null, 31.0, 240.0),
                new Braking(0.3, 0.2, braking, collapse),
                new Posture(
                        change(25),
                        change(lean),
                        change(rotation),
                        change(tilt),
                        change(obliquity),
                        change(twist),
                        change(spine)),
                new Balance(
                        null,
                        null,
                        overFeet ? new OverFeet(0, foreAft, 0, lateral, 0.001, 0.001) : null,
                        steps,
                        steps == 0 ? null : direction,
                        foot),
                new Sigma(0.003, 0.01, 0.06, heightSigma, 0.2, 0.001, brakingSigma(), 1.0));
    }

    /** By hand, through 1 + h / d. */
    private Double brakingSigma() {
        return Math.hypot(heightSigma / 0.3, height * 0.001 / (0.3 * 0.3));
    }

    private Excursion change(double change) {
        return new Excursion(2, 3, 4.0, 2 + change, change, sigma);
    }
}

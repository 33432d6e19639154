package evenfall.report.coaching;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Balance;
import evenfall.fusion.landing.Braking;
import evenfall.fusion.landing.Excursion;
import evenfall.fusion.landing.Fall;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.OverFeet;
import evenfall.fusion.landing.Posture;
import evenfall.fusion.landing.Sigma;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.form.FormVerdict;
import evenfall.report.log.LandingNote;
import evenfall.report.session.SessionLanding;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Landings with figures of a test's choice; all others are small and never worth a word. */
final class Landings {

    double contactS = 60;

    @Nullable Double settledS = 61.0;

    @Nullable Double heightM = 0.6;

    @Nullable Double heightSigma = 0.02;

    double peakG = 6;
    double peakSigma = 0.2;
    boolean clipped;

    @Nullable Double lean = 1.0;

    double leanSigma = 0.8;
    double rotation = 1;
    double behindM;
    int steps;

    @Nullable StepDirection direction;

    Set<LandingFlag> flags = Set.of();

    @Nullable String leaveOut;

    @Nullable FormVerdict verdict;

    EventKind kind = EventKind.LANDING;

    /** By hand, through 1 + h / d. */
    private @Nullable Double brakingSigma() {
        return heightM == null || heightSigma == null
                ? null
                : Double.valueOf(Math.hypot(heightSigma / 0.3, heightM * 0.01 / (0.3 * 0.3)));
    }

    SessionLanding make() {
        Double leaned = lean;
        Measures measures = new Measures(
                new Fall(0.35, 3.4, heightM),
                new Impact(peakG, null, clipped, null, null, null),
                new Braking(0.3, 0.2, heightM == null ? null : Double.valueOf(1 + heightM / 0.3), 50.0),
                new Posture(
                        null,
                        leaned == null ? null : excursion(leaned, leanSigma),
                        excursion(rotation, 0.8),
                        excursion(5, 0.8),
                        excursion(0.5, 0.8),
                        excursion(0.5, 0.8),
                        excursion(5, 0.8)),
                new Balance(null, null, new OverFeet(0, -behindM, 0, 0.0, 0.01, 0.01), steps, direction, null),
                new Sigma(0.003, 0.01, 0.05, heightSigma, peakSigma, 0.01, brakingSigma(), 8.0));
        Moments moments = new Moments(contactS - 0.35, contactS, contactS + 0.04, contactS + 0.2, settledS);
        return new SessionLanding(
                new Landing(1, kind, moments, null, kind == EventKind.LANDING ? measures : null, flags),
                verdict,
                null,
                new LandingNote(null, null, null, null, leaveOut, null));
    }

    private static Excursion excursion(double change, double sigma) {
        return new Excursion(0, change / 2, change, change, change, sigma);
    }
}

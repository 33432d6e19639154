package evenfall.report.session;

import evenfall.fusion.landing.Attenuation;
import evenfall.fusion.landing.Impact;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Stabilisation;
import evenfall.ingest.recording.Gravity;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What only a scientist asks of a landing. Nothing of it judges a landing, and no page for a coach shows it.
 *
 * @param attenuation of the two peaks, %, or null without an upper back or where the pelvis' peak was cut off
 * @param transfer of the power from 10 to 20 Hz in the half second from contact on, dB, or null alike
 * @param steadyS from contact until the pelvis is pushed up by its weight within 5 % and stays so for a second, s; or null
 * @param meanSteadyS the same by the mean of all so far, s, or null; it depends on how long the signal is
 */
public record LandingScience(
        @Nullable Double attenuation,
        @Nullable Double transfer,
        @Nullable Double steadyS,
        @Nullable Double meanSteadyS) {

    private static final LandingScience NONE = new LandingScience(null, null, null, null);

    private static final double BLOW_S = 0.5;
    private static final double FROM_HZ = 10;
    private static final double TO_HZ = 20;
    private static final double NEAR = 0.05;
    private static final double STAYS_S = 1;

    /** Of a landing with its signals; all null without them. */
    public static LandingScience of(SessionLanding landing) {
        LandingTrace trace = landing.trace();
        Measures measures = landing.landing().measures();
        if (trace == null || measures == null) {
            return NONE;
        }
        double[] t = trace.timeS();
        int contact = at(t, 0);
        double rateHz = (t.length - 1) / (t[t.length - 1] - t[0]);
        double[] after = Arrays.copyOfRange(t, contact, t.length);
        double[] weights = weights(trace.verticalSpeedMS(), contact, rateHz);
        Impact impact = measures.impact();
        Double upperBack = impact.peakUpperBackG();
        boolean whole = !impact.clipped();
        return new LandingScience(
                whole && upperBack != null ? Double.valueOf(Attenuation.percent(impact.peakG(), upperBack)) : null,
                whole ? transfer(trace, contact, rateHz) : null,
                Stabilisation.withinBand(after, weights, 1, NEAR, STAYS_S),
                weights.length < 2 ? null : Double.valueOf(Stabilisation.ofRunningMean(after, weights)));
    }

    private static @Nullable Double transfer(LandingTrace trace, int contact, double rateHz) {
        double[] upperBack = trace.upperBackG();
        int end = Math.min(trace.timeS().length, contact + (int) Math.round(BLOW_S * rateHz));
        if (upperBack == null || end - contact < BLOW_S * rateHz - 1) {
            return null;
        }
        double decibels = Attenuation.decibels(
                Arrays.copyOfRange(trace.pelvisG(), contact, end),
                Arrays.copyOfRange(upperBack, contact, end),
                rateHz,
                FROM_HZ,
                TO_HZ);
        return Double.isNaN(decibels) ? null : decibels;
    }

    /** What pushes the pelvis up, in its own weights, from contact on: 1 and how fast its upward speed grows. */
    private static double[] weights(double[] speed, int contact, double rateHz) {
        double[] weights = new double[speed.length - contact];
        for (int i = 0; i < weights.length; i++) {
            int before = Math.max(contact + i - 1, 0);
            int behind = Math.min(contact + i + 1, speed.length - 1);
            weights[i] = 1 + (speed[behind] - speed[before]) * rateHz / (behind - before) / Gravity.STANDARD;
        }
        return weights;
    }

    private static int at(double[] timeS, double t) {
        int found = Arrays.binarySearch(timeS, t);
        return Math.min(found < 0 ? -found - 1 : found, timeS.length - 1);
    }
}

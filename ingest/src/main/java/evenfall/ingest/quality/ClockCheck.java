package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The clock: a rate outside what the measures are made for or one that changes, jitter, repeated time stamps. */
final class ClockCheck {

    /** What landings are measured at: the house's own range. */
    private static final double SLOWEST_HZ = 50;

    private static final double FASTEST_HZ = 1600;

    /** Clocks of one recording differ by parts in ten thousand, so this far off is another rate. */
    private static final double OTHER_RATE = 0.05;

    private static final double STRETCH_S = 5;

    /** Time stamps that scatter by more than this share of the interval blur moments: common practice, no source. */
    private static final double JITTER_SHARE = 0.15;

    /** So many steps tell their median. */
    private static final int MOST_STEPS = 100_000;

    private ClockCheck() {}

    static List<Finding> check(SensorStream stream) {
        List<Finding> findings = new ArrayList<>();
        if (stream.size() < 3 || stream.rateHz() == 0) {
            return findings;
        }
        range(stream, findings);
        changes(stream, findings);
        boolean repeated = repeated(stream, findings);
        if (!repeated) {
            jitter(stream, findings);
        }
        return findings;
    }

    private static void range(SensorStream stream, List<Finding> findings) {
        double rate = stream.rateHz();
        if (rate < 0.995 * SLOWEST_HZ) {
            findings.add(new Finding(
                    FindingCode.RATE,
                    Severity.WARNING,
                    "The sensor gives " + Wording.number(rate, 1)
                            + " samples a second, fewer than 50: peaks fall between"
                            + " samples and read too low, so set the sensor to 100 Hz or more.",
                    null,
                    0.0));
        } else if (rate > 1.005 * FASTEST_HZ) {
            findings.add(new Finding(
                    FindingCode.RATE,
                    Severity.WARNING,
                    "The samples seem to come at " + Wording.number(rate, 0)
                            + " Hz, more than 1600: look whether the unit" + " of the time column is right.",
                    null,
                    0.0));
        }
    }

    private static void changes(SensorStream stream, List<Finding> findings) {
        int stretch = (int) Math.max(20, Math.round(STRETCH_S * stream.rateHz()));
        int count = 0;
        double otherRate = 0;
        double first = 0;
        double seconds = 0;
        for (int start = 0; start + stretch < stream.size(); start += stretch) {
            double rate = 1 / usualStep(stream, start, start + stretch);
            if (Math.abs(rate / stream.rateHz() - 1) > OTHER_RATE) {
                if (count++ == 0) {
                    first = stream.time(start == 0 ? 0 : turn(stream, start - stretch, start + stretch));
                    otherRate = rate;
                }
                seconds += stream.time(start + stretch) - stream.time(start);
            }
        }
        if (count > 0) {
            findings.add(new Finding(
                    FindingCode.RATE,
                    Severity.WARNING,
                    "The rate is not the same throughout: about " + Wording.number(otherRate, 1) + " Hz from "
                            + Wording.moment(first) + ", where most of the recording has "
                            + Wording.number(stream.rateHz(), 1) + " Hz (" + Wording.length(seconds)
                            + " in all): peaks of the slower part read lower, so do not compare them.",
                    null,
                    first));
        }
    }

    /** Where between two samples the length of the steps changes: the split that two means explain best. */
    private static int turn(SensorStream stream, int from, int to) {
        double longest = 4 / stream.rateHz();
        double sum = 0;
        double[] before = new double[to - from + 1];
        for (int i = from; i < to; i++) {
            sum += Math.min(longest, stream.time(i + 1) - stream.time(i));
            before[i - from + 1] = sum;
        }
        int best = from;
        double most = 0;
        for (int k = 1; k < to - from; k++) {
            double rest = sum - before[k];
            double explained = before[k] * before[k] / k + rest * rest / (to - from - k);
            if (explained > most) {
                most = explained;
                best = from + k;
            }
        }
        return best;
    }

    /** Mean of the ordinary steps, s; of all steps where most are longer than ordinary. */
    private static double usualStep(SensorStream stream, int from, int to) {
        double usual = 1 / stream.rateHz();
        double sum = 0;
        int ordinary = 0;
        for (int i = from; i < to; i++) {
            double step = stream.time(i + 1) - stream.time(i);
            if (Math.abs(step - usual) < 0.5 * usual) {
                sum += step;
                ordinary++;
            }
        }
        if (2 * ordinary >= to - from) {
            return sum / ordinary;
        }
        return (stream.time(to) - stream.time(from)) / (to - from);
    }

    /** Tells repeated stamps; returns whether there are so many that their jitter is no news. */
    private static boolean repeated(SensorStream stream, List<Finding> findings) {
        int count = 0;
        double first = 0;
        for (int i = 1; i < stream.size(); i++) {
            if (stream.time(i) == stream.time(i - 1)) {
                first = count++ == 0 ? stream.time(i) : first;
            }
        }
        if (count > 0) {
            findings.add(new Finding(
                    FindingCode.REPEATED_TIME,
                    count > 0.01 * stream.size() ? Severity.WARNING : Severity.NOTE,
                    Wording.count(count, "sample carries", "samples carry") + " the same time as the one before ("
                            + Wording.percent((double) count / stream.size()) + "), the first at "
                            + Wording.moment(first)
                            + ": moments there are blurred; let the sensor stamp each sample by its own clock.",
                    null,
                    first));
        }
        return count > 0.01 * stream.size();
    }

    private static void jitter(SensorStream stream, List<Finding> findings) {
        double interval = 1 / stream.rateHz();
        double scatter = Math.max(scatter(stream), middling(stream));
        double worst = 0;
        double worstAt = 0;
        for (int i = 1; i < stream.size(); i++) {
            double off = Math.abs(stream.time(i) - stream.time(i - 1) - interval);
            if (off < 0.5 * interval && off > worst) {
                worst = off;
                worstAt = stream.time(i);
            }
        }
        if (scatter > JITTER_SHARE * interval) {
            findings.add(new Finding(
                    FindingCode.JITTER,
                    Severity.NOTE,
                    "The time between samples scatters by " + Wording.length(scatter) + " about its "
                            + Wording.length(interval) + ", worst at " + Wording.moment(worstAt)
                            + ": moments are no surer than that; let the sensor stamp each sample by its own clock.",
                    null,
                    worstAt));
        }
    }

    /** Scatter by the median distance, which steps far off the usual do not escape, s; as for a normal distribution. */
    private static double middling(SensorStream stream) {
        double interval = 1 / stream.rateHz();
        int stride = Math.max(1, stream.size() / MOST_STEPS);
        double[] off = new double[(stream.size() - 2) / stride + 1];
        for (int k = 0; k < off.length; k++) {
            int i = 1 + k * stride;
            off[k] = Math.abs(stream.time(i) - stream.time(i - 1) - interval);
        }
        Arrays.sort(off);
        return 1.4826 * off[off.length / 2];
    }

    /** Root mean square distance of the time between samples from its usual, s; gaps and lost samples do not count. */
    static double scatter(SensorStream stream) {
        double interval = 1 / stream.rateHz();
        double squares = 0;
        int count = 0;
        for (int i = 1; i < stream.size(); i++) {
            double off = stream.time(i) - stream.time(i - 1) - interval;
            if (Math.abs(off) < 0.5 * interval) {
                squares += off * off;
                count++;
            }
        }
        return Math.sqrt(squares / Math.max(1, count));
    }
}

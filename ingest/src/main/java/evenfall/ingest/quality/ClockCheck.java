package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Digits;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The clock: a rate outside what the measures are made for or one that changes, jitter, repeated time stamps. */
final class ClockCheck {

    private static final Words WORDS = Words.beside(ClockCheck.class);

    /** What landings are measured at: the house's own range. */
    private static final double SLOWEST_HZ = 50;

    private static final double FASTEST_HZ = 1600;

    /** Clocks of one recording differ by parts in ten thousand, so this far off is another rate. */
    private static final double OTHER_RATE = 0.05;

    private static final double STRETCH_S = 5;

    /** Time stamps that scatter by more than this share of the interval blur moments: common practice, no source. */
    private static final double JITTER_SHARE = 0.15;

    private ClockCheck() {}

    static List<Finding> check(SensorStream stream, Steps steps) {
        List<Finding> findings = new ArrayList<>();
        if (stream.size() < 3 || stream.rateHz() == 0) {
            return findings;
        }
        range(stream, findings);
        changes(stream, findings);
        boolean repeated = repeated(stream, steps, findings);
        if (!repeated) {
            jitter(stream, steps, findings);
        }
        return findings;
    }

    private static void range(SensorStream stream, List<Finding> findings) {
        double rate = stream.rateHz();
        if (rate < 0.995 * SLOWEST_HZ) {
            findings.add(new Finding(
                    FindingCode.RATE, Severity.WARNING, WORDS.say("rate.slow", Digits.fixed(rate, 1)), null, 0.0));
        } else if (rate > 1.005 * FASTEST_HZ) {
            findings.add(new Finding(
                    FindingCode.RATE, Severity.WARNING, WORDS.say("rate.fast", Digits.fixed(rate, 0)), null, 0.0));
        }
    }

    private static void changes(SensorStream stream, List<Finding> findings) {
        int stretch = (int) Math.max(20, Math.round(STRETCH_S * stream.rateHz()));
        int count = 0;
        double otherRate = 0;
        double first = 0;
        double seconds = 0;
        double[] times = new double[stretch + 1];
        for (int start = 0; start + stretch < stream.size(); start += stretch) {
            stream.readTimes(start, times);
            double rate = 1 / usualStep(times, 1 / stream.rateHz());
            if (Math.abs(rate / stream.rateHz() - 1) > OTHER_RATE) {
                if (count++ == 0) {
                    first = stream.time(start == 0 ? 0 : turn(stream, start - stretch, start + stretch));
                    otherRate = rate;
                }
                seconds += times[stretch] - times[0];
            }
        }
        if (count > 0) {
            findings.add(new Finding(
                    FindingCode.RATE,
                    Severity.WARNING,
                    WORDS.say(
                            "rate.changes",
                            Digits.fixed(otherRate, 1),
                            Wording.moment(first),
                            Digits.fixed(stream.rateHz(), 1),
                            Wording.length(seconds)),
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
    private static double usualStep(double[] times, double usual) {
        int last = times.length - 1;
        double sum = 0;
        int ordinary = 0;
        for (int i = 0; i < last; i++) {
            double step = times[i + 1] - times[i];
            if (Math.abs(step - usual) < 0.5 * usual) {
                sum += step;
                ordinary++;
            }
        }
        return 2 * ordinary >= last ? sum / ordinary : (times[last] - times[0]) / last;
    }

    /** Tells repeated stamps; returns whether there are so many that their jitter is no news. */
    private static boolean repeated(SensorStream stream, Steps steps, List<Finding> findings) {
        int count = steps.repeated();
        if (count > 0) {
            findings.add(new Finding(
                    FindingCode.REPEATED_TIME,
                    count > 0.01 * stream.size() ? Severity.WARNING : Severity.NOTE,
                    WORDS.say(
                            "time.repeated",
                            Wording.count(count, "sample carries", "samples carry"),
                            Wording.percent((double) count / stream.size()),
                            Wording.moment(steps.firstRepeatedS())),
                    null,
                    steps.firstRepeatedS()));
        }
        return count > 0.01 * stream.size();
    }

    private static void jitter(SensorStream stream, Steps steps, List<Finding> findings) {
        double interval = 1 / stream.rateHz();
        double scatter = Math.max(steps.scatterS(), steps.middlingS());
        if (scatter > JITTER_SHARE * interval) {
            findings.add(new Finding(
                    FindingCode.JITTER,
                    Severity.NOTE,
                    WORDS.say(
                            "time.scatters",
                            Wording.length(scatter),
                            Wording.length(interval),
                            Wording.moment(steps.worstAtS())),
                    null,
                    steps.worstAtS()));
        }
    }
}

package evenfall.ingest.quality;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.recording.Gap;
import evenfall.ingest.recording.SensorStream;
import evenfall.ingest.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Missing time: each gap where it is and how long, and the sum of what is missing, single lost samples included. */
final class GapCheck {

    private static final Words WORDS = Words.beside(GapCheck.class);

    /** So many gaps are told one by one; more are told by the longest of them and a sum. */
    private static final int TOLD_SINGLY = 10;

    /** A shorter gap is bridged by interpolation without much harm: common practice, no source. */
    private static final double HARMLESS_S = 0.05;

    /** With stamps that scatter by more than this share of the interval a long step need not be a lost sample. */
    private static final double CLEAR_STAMPS = 0.2;

    /** More repeated time stamps than this share mean that samples arrive in packets. */
    private static final double PACKETS = 0.1;

    private GapCheck() {}

    static List<Finding> check(SensorStream stream, Steps steps) {
        if (stream.size() < 3 || stream.rateHz() == 0) {
            return List.of();
        }
        double interval = 1 / stream.rateHz();
        boolean clear = steps.scatterS() < CLEAR_STAMPS * interval;
        int single = clear ? steps.lost() : 0;
        boolean packets = steps.repeated() > PACKETS * stream.size();
        List<Gap> gaps = stream.gaps();
        List<Finding> findings = new ArrayList<>(gaps(gaps, interval));
        long missing = packets ? 0 : single;
        for (Gap gap : gaps) {
            missing += missing(gap, interval);
        }
        if (missing > 0) {
            double first = gaps.isEmpty() ? steps.firstLostS() : gaps.get(0).startS();
            first = single > 0 && !packets ? Math.min(first, steps.firstLostS()) : first;
            findings.add(lost(stream, missing, first));
        }
        return findings;
    }

    private static List<Finding> gaps(List<Gap> gaps, double interval) {
        if (gaps.size() <= TOLD_SINGLY) {
            return gaps.stream().map(gap -> gap(gap, interval)).toList();
        }
        List<Gap> longest = gaps.stream()
                .sorted(Comparator.comparingDouble(Gap::lengthS).reversed())
                .limit(TOLD_SINGLY - 1)
                .toList();
        List<Finding> findings = new ArrayList<>();
        longest.forEach(gap -> findings.add(gap(gap, interval)));
        List<Gap> rest = gaps.stream().filter(gap -> !longest.contains(gap)).toList();
        double sum = rest.stream().mapToDouble(Gap::lengthS).sum();
        double most = rest.stream().mapToDouble(Gap::lengthS).max().orElse(0);
        findings.add(new Finding(
                FindingCode.GAP,
                most < HARMLESS_S ? Severity.NOTE : Severity.WARNING,
                WORDS.say(
                        "gap.more",
                        rest.size(),
                        Wording.moment(rest.get(0).startS()),
                        Wording.moment(rest.get(rest.size() - 1).startS()),
                        Wording.length(most),
                        Wording.length(sum)),
                null,
                rest.get(0).startS()));
        return findings;
    }

    private static Finding gap(Gap gap, double interval) {
        boolean harmless = gap.lengthS() < HARMLESS_S;
        return new Finding(
                FindingCode.GAP,
                harmless ? Severity.NOTE : Severity.WARNING,
                WORDS.say(
                        "gap",
                        Wording.length(gap.lengthS()),
                        Wording.moment(gap.startS()),
                        Wording.count(missing(gap, interval), "sample", "samples"),
                        WORDS.say(harmless ? "gap.bridged" : "gap.unknown")),
                null,
                gap.startS());
    }

    private static Finding lost(SensorStream stream, long missing, double first) {
        double share = (double) missing / (stream.size() + missing);
        return new Finding(
                FindingCode.LOST_SAMPLES,
                share > 0.01 ? Severity.WARNING : Severity.NOTE,
                WORDS.say(
                        "missing",
                        Wording.count(missing, "sample is", "samples are"),
                        Wording.percent(share),
                        Wording.moment(first)),
                null,
                first);
    }

    private static long missing(Gap gap, double interval) {
        return Math.max(1, Math.round(gap.lengthS() / interval) - 1);
    }
}

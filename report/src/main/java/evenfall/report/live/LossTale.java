package evenfall.report.live;

import evenfall.ingest.wire.WireCounts;
import evenfall.ingest.words.Words;
import java.util.List;

/** What was said of samples of one port that are sent and do not come. */
final class LossTale {

    private static final Words WORDS = Words.beside(LossTale.class);

    /** Over so long lost samples are counted, s. */
    private static final double SPAN_S = 10;

    /** From this share on it is said: single losses of 2 in 100 cost no landing anything, of 5 in 100 heights and moments. */
    private static final double MUCH = 0.05;

    /** Below this share it is well again. */
    private static final double WELL = 0.01;

    /** More at one look is a sensor that was silent for a while, of which something else is said. */
    private static final long SILENCE = 100;

    private double sinceS = Double.NaN;
    private long lost;
    private long good;
    private long lostBefore;
    private boolean told;

    void tell(double nowS, String port, WireCounts counts, List<String> news) {
        boolean silent = counts.lost() - lostBefore > SILENCE;
        lostBefore = counts.lost();
        if (Double.isNaN(sinceS) || silent) {
            begin(nowS, counts);
        } else if (nowS - sinceS >= SPAN_S) {
            long missed = counts.lost() - lost;
            long sent = missed + counts.good() - good;
            double share = sent == 0 ? 0 : (double) missed / sent;
            if (!told && share >= MUCH) {
                told = true;
                news.add(WORDS.say("port.loses", port, Math.round(share * 100)));
            } else if (told && sent > 0 && share < WELL) {
                told = false;
                news.add(WORDS.say("port.loses.no.more", port));
            }
            begin(nowS, counts);
        }
    }

    private void begin(double nowS, WireCounts counts) {
        sinceS = nowS;
        lost = counts.lost();
        good = counts.good();
    }
}

package evenfall.report.block;

import evenfall.ingest.words.Words;
import evenfall.report.form.Form;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Jackknife;
import evenfall.report.statistics.LogisticFit;
import evenfall.report.statistics.StudentT;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether the height up to which form was held moves: one logistic curve of held against height and weeks together, so that
 * boxes that rise with the weeks are not taken for a person who changes. Interval by leaving out one session after another
 * (jackknife: Efron and Tibshirani 1993, chapter 11), with Student's t.
 */
final class FormHeightTrendAnalysis {

    private static final Words WORDS = Words.beside(FormHeightTrendAnalysis.class);

    private static final int SESSIONS = 4;

    /** The slope and the level are both told from the sessions. */
    private static final int TOLD = 2;

    /** A level, the height and the weeks. */
    private static final int COLUMNS = 3;

    private final List<BlockLanding> judged;
    private final BySession by;
    private final double[] weeks;
    private final double[] heights;
    private double[] start = new double[COLUMNS];

    private FormHeightTrendAnalysis(List<BlockLanding> judged, double[] heights) {
        this.judged = judged;
        this.heights = heights;
        this.by = new BySession(judged);
        this.weeks = by.weeks();
    }

    /** Over the counted landings of a block. */
    static FormHeightTrend find(List<BlockLanding> counted) {
        List<BlockLanding> judged = FormHeightFinder.judged(counted);
        double[] heights = FormHeightFinder.heights(counted, judged);
        return new FormHeightTrendAnalysis(judged, heights).trend();
    }

    private FormHeightTrend trend() {
        if (by.sessions() < SESSIONS || weeks[weeks.length - 1] == 0) {
            return FormHeightTrend.untold(Trend.TOO_FEW, WORDS.say("height.trend.few"));
        }
        OptionalDouble whole = perWeek(-1);
        if (whole.isEmpty()) {
            return FormHeightTrend.untold(Trend.NO_CLEAR_CHANGE, WORDS.say("height.flat"));
        }
        int n = by.sessions();
        double[] without = new double[n];
        for (int s = 0; s < n; s++) {
            OptionalDouble one = perWeek(s);
            if (one.isEmpty()) {
                return FormHeightTrend.untold(Trend.NO_CLEAR_CHANGE, WORDS.say("height.trend.single"));
            }
            without[s] = one.getAsDouble();
        }
        double slope = whole.getAsDouble();
        StudentT said = new StudentT(slope, Jackknife.error(without), n - TOLD);
        Interval interval = said.interval();
        String verdict = !interval.clearOfZero() ? Trend.NO_CLEAR_CHANGE : slope > 0 ? Trend.RISING : Trend.FALLING;
        return new FormHeightTrend(slope, interval, verdict, said.chance(), null);
    }

    /** Metres a week by the curve of all sessions but one; empty where no curve falls with height. */
    private OptionalDouble perWeek(int leftOut) {
        int[] session = by.session();
        int n = 0;
        for (int s : session) {
            n += s == leftOut ? 0 : 1;
        }
        double[][] columns = new double[COLUMNS][n];
        boolean[] held = new boolean[n];
        int held1 = 0;
        int at = 0;
        for (int i = 0; i < session.length; i++) {
            if (session[i] != leftOut) {
                columns[0][at] = 1;
                columns[1][at] = heights[i];
                columns[2][at] = weeks[session[i]];
                held[at] = judged.get(i).form() == Form.HELD;
                held1 += held[at] ? 1 : 0;
                at++;
            }
        }
        if (held1 == 0 || held1 == n) {
            return OptionalDouble.empty();
        }
        // The curve of all sessions lies near that of all but one: a step or two from it are enough.
        double[] b = LogisticFit.of(columns, held, start);
        start = leftOut < 0 ? b : start;
        return b[1] < 0 ? OptionalDouble.of(-b[2] / b[1]) : OptionalDouble.empty();
    }
}

package evenfall.report.block;

import evenfall.ingest.words.Words;
import evenfall.report.statistics.GroupSlope;
import evenfall.report.statistics.Interval;
import evenfall.report.statistics.Medians;
import evenfall.report.statistics.StudentT;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What drifts within a session: how landings of one day and one height differ by their number, the foot held equal. Each such
 * group has a level of its own, so that neither what a day does nor a ladder of boxes, however height acts, passes for tiring.
 */
final class TiringAnalysis {

    private static final Words WORDS = Words.beside(TiringAnalysis.class);

    private static final int SESSIONS = 4;

    /** Noted heights are as good as equal within this, m. */
    private static final double SAME_M = 0.02;

    private final Tiring tiring;
    private final double p;

    /**
     * Analyses one measure.
     *
     * @param landings counted landings that have a value
     * @param heights whether any height is noted
     * @param cutOff whether a landing's value may be larger
     * @param mdc95 smallest change that is more than the typical error explains, or null if not known
     */
    TiringAnalysis(
            List<BlockLanding> landings,
            boolean heights,
            ToDoubleFunction<BlockLanding> value,
            Predicate<BlockLanding> cutOff,
            @Nullable Double mdc95) {
        if (!heights) {
            this.tiring = Tiring.untold(Trend.NO_CLEAR_CHANGE, WORDS.say("tiring.heights"));
            this.p = 1;
            return;
        }
        List<BlockLanding> used =
                landings.stream().filter(landing -> landing.heightM() != null).toList();
        BySession by = new BySession(used);
        double[] number = used.stream().mapToDouble(BlockLanding::number).toArray();
        if (CutOff.share(used, cutOff) > CutOff.MOST) {
            this.tiring = Tiring.untold(Trend.NO_CLEAR_CHANGE, WORDS.say("tiring.hidden"));
            this.p = 1;
            return;
        }
        double[][] feet = HeightModel.feet(used);
        StudentT said = GroupSlope.of(
                groups(used),
                by.session(),
                by.sessions(),
                new double[][] {number, feet[0], feet[1]},
                used.stream().mapToDouble(value).toArray(),
                SESSIONS);
        if (said == null) {
            this.tiring = Tiring.untold(Trend.TOO_FEW, WORDS.say("tiring.few"));
            this.p = 1;
            return;
        }
        double slope = said.estimate();
        Interval interval = said.interval();
        double span = Medians.of(spans(by, number));
        boolean clear = mdc95 != null && interval.clearOfZero() && Math.abs(slope) * span > mdc95;
        this.tiring = new Tiring(
                slope,
                interval,
                slope * span,
                (int) Math.round(span) + 1,
                !clear ? Trend.NO_CLEAR_CHANGE : slope > 0 ? Trend.RISING : Trend.FALLING,
                null);
        this.p = said.chance();
    }

    Tiring tiring() {
        return tiring;
    }

    /** How often chance alone would give a drift as steep. */
    double p() {
        return p;
    }

    /** From the first to the last landing of each session. */
    private static double[] spans(BySession by, double[] number) {
        return Arrays.stream(by.split(number))
                .mapToDouble(numbers -> Arrays.stream(numbers).max().orElse(0)
                        - Arrays.stream(numbers).min().orElse(0))
                .toArray();
    }

    /** The number of each landing's group: landings of one day and one height. */
    private static int[] groups(List<BlockLanding> landings) {
        Map<String, Integer> numbers = new HashMap<>();
        int[] group = new int[landings.size()];
        for (int i = 0; i < group.length; i++) {
            BlockLanding landing = landings.get(i);
            long step = Math.round(Objects.requireNonNull(landing.heightM()) / SAME_M);
            String name = landing.date() + " " + step;
            group[i] = numbers.computeIfAbsent(name, key -> numbers.size());
        }
        return group;
    }
}

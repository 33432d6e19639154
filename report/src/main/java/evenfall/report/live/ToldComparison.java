package evenfall.report.live;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Measures;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureKind;
import evenfall.report.measure.MeasureList;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays landings as they were told beside the same landings by the analysis of the whole.
 *
 * @param differences measures that differ by more than both sigmas together, landing by landing, the largest in sigmas first
 * @param gone landings that were told and are none by the whole
 * @param untold landings of the whole that were never told
 */
public record ToldComparison(List<ToldDifference> differences, List<Landing> gone, List<Landing> untold) {

    /** Contacts this near are one landing's, s. */
    private static final double SAME_S = 0.3;

    public ToldComparison {
        differences = List.copyOf(differences);
        gone = List.copyOf(gone);
        untold = List.copyOf(untold);
    }

    /**
     * Compares.
     *
     * @param told as they were told
     * @param whole all events by the whole
     */
    public static ToldComparison of(List<Landing> told, List<Landing> whole) {
        List<ToldDifference> differences = new ArrayList<>();
        List<Landing> gone = new ArrayList<>();
        for (Landing live : told) {
            Landing last = same(live, whole);
            if (last == null) {
                gone.add(live);
            } else {
                differences.addAll(between(live, last));
            }
        }
        List<Landing> untold = whole.stream()
                .filter(landing -> landing.kind() == EventKind.LANDING && same(landing, told) == null)
                .toList();
        return new ToldComparison(differences, gone, untold);
    }

    private static @Nullable Landing same(Landing landing, List<Landing> among) {
        for (Landing other : among) {
            double apart = landing.moments().contactS() - other.moments().contactS();
            if (other.kind() == landing.kind() && Math.abs(apart) < SAME_S) {
                return other;
            }
        }
        return null;
    }

    /** The measures of one landing that differ by more than both sigmas together, the largest difference in sigmas first. */
    public static List<ToldDifference> between(Landing told, Landing whole) {
        Measures live = told.measures();
        Measures last = whole.measures();
        List<ToldDifference> differences = new ArrayList<>();
        if (live == null || last == null) {
            return differences;
        }
        for (Measure measure : MeasureList.all()) {
            ToldDifference difference =
                    measure.kind() == MeasureKind.COMPARED ? difference(whole.index(), measure, live, last) : null;
            if (difference != null && difference.sigmas() > 1) {
                differences.add(difference);
            }
        }
        differences.sort(Comparator.comparingDouble(ToldDifference::sigmas).reversed());
        return differences;
    }

    private static @Nullable ToldDifference difference(int index, Measure measure, Measures live, Measures last) {
        Measure sigma = MeasureList.sigmaOf(measure).orElse(null);
        if (sigma == null) {
            return null;
        }
        Double told = measure.of(live);
        Double is = measure.of(last);
        Double one = sigma.of(live);
        Double other = sigma.of(last);
        if (told == null || is == null || one == null || other == null || !(Math.hypot(one, other) > 0)) {
            return null;
        }
        return new ToldDifference(index, measure, told, is, Math.hypot(one, other));
    }
}

package evenfall.report.chart;

import java.util.ArrayList;
import java.util.List;

/** Puts marks that share a line into rows so that none hides another. */
final class Swarm {

    private Swarm() {}

    /**
     * The row of each mark, from 0; marks of one row lie at least {@code apart} from one another.
     *
     * @param x where each mark lies along the line
     */
    static int[] rows(double[] x, double apart) {
        int[] rows = new int[x.length];
        List<List<Double>> taken = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            double at = x[i];
            int row = 0;
            while (row < taken.size() && taken.get(row).stream().anyMatch(other -> Math.abs(other - at) < apart)) {
                row++;
            }
            if (row == taken.size()) {
                taken.add(new ArrayList<>());
            }
            taken.get(row).add(at);
            rows[i] = row;
        }
        return rows;
    }

    /** How many rows there are. */
    static int count(int[] rows) {
        int most = 0;
        for (int row : rows) {
            most = Math.max(most, row + 1);
        }
        return most;
    }
}

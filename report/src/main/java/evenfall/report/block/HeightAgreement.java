package evenfall.report.block;

import evenfall.report.statistics.Agreement;
import evenfall.report.statistics.IntraclassCorrelation;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How the drop heights that sensors measure agree with those somebody noted, landing by landing; for scientists. Landings are
 * taken as independent, though those of one day are alike.
 *
 * @param agreement measured less noted, m
 * @param absolute correlation of the two where it matters if one is always larger, or null
 * @param consistent the same where it does not matter, or null
 */
public record HeightAgreement(
        Agreement agreement,
        @Nullable IntraclassCorrelation absolute,
        @Nullable IntraclassCorrelation consistent) {

    private static final int LEAST = 10;

    /** Of a block; null with fewer than ten landings whose height is both noted and measured. */
    public static @Nullable HeightAgreement of(Block block) {
        List<BlockLanding> both = block.landings().stream()
                .filter(landing -> landing.heightM() != null && landing.values().get("dropHeightM") != null)
                .toList();
        if (both.size() < LEAST) {
            return null;
        }
        double[][] table = new double[both.size()][];
        for (int i = 0; i < table.length; i++) {
            table[i] = new double[] {
                Objects.requireNonNull(both.get(i).values().get("dropHeightM")),
                Objects.requireNonNull(both.get(i).heightM())
            };
        }
        return new HeightAgreement(
                Agreement.of(column(table, 0), column(table, 1)),
                IntraclassCorrelation.agreement(table),
                IntraclassCorrelation.consistency(table));
    }

    private static double[] column(double[][] table, int column) {
        double[] values = new double[table.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = table[i][column];
        }
        return values;
    }
}

package evenfall.fusion.accuracy;

import evenfall.fusion.event.FinderTally;
import evenfall.fusion.orientation.FilterKind;
import evenfall.fusion.orientation.OpenTrials;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The page's tables of the open recordings of people and of optical truth. */
final class OpenDataPart {

    private static final List<FilterKind> FILTERS =
            List.of(FilterKind.LIVE, FilterKind.TWO_PASS, FilterKind.MADGWICK, FilterKind.COMPLEMENTARY);

    /** Activities of the recordings of people by the beginning of their file names. */
    private static final Map<String, String> ACTIVITIES = new LinkedHashMap<>();

    static {
        ACTIVITIES.put("D19", "jumping");
        ACTIVITIES.put("D01", "walking");
        ACTIVITIES.put("D02", "walking quickly");
        ACTIVITIES.put("D03", "jogging");
        ACTIVITIES.put("D04", "jogging quickly");
        ACTIVITIES.put("D05", "stairs");
        ACTIVITIES.put("D06", "stairs quickly");
        ACTIVITIES.put("D08", "sitting down quickly");
        ACTIVITIES.put("D10", "sitting down on a low chair");
        ACTIVITIES.put("D11", "collapsing into a chair");
        ACTIVITIES.put("D15", "squatting");
        ACTIVITIES.put("D16", "bending");
        ACTIVITIES.put("D18", "stumbling");
        ACTIVITIES.put("F01", "fall while walking");
        ACTIVITIES.put("F05", "fall while jogging");
        ACTIVITIES.put("F06", "fainting");
        ACTIVITIES.put("F14", "fall from sitting");
    }

    private OpenDataPart() {}

    /** Inclination errors by trial and filter. */
    static String orientation(Path broad) {
        List<String> head = new ArrayList<>(List.of("trial"));
        FILTERS.forEach(filter -> head.add("`" + filter.code() + "`"));
        MarkdownTable table = new MarkdownTable(head);
        double[][] sums = new double[FILTERS.size()][2];
        for (String name : OpenTrials.NAMES) {
            OpenTrials.Trial trial = read(broad, name);
            List<OpenTrials.Inclination> errors =
                    FILTERS.parallelStream().map(trial::error).toList();
            List<String> row =
                    new ArrayList<>(List.of(name.substring(0, name.length() - 2).replace('_', ' ')));
            for (int k = 0; k < errors.size(); k++) {
                sums[k][0] += errors.get(k).delayed() / OpenTrials.NAMES.size();
                sums[k][1] += errors.get(k).asItComes() / OpenTrials.NAMES.size();
                row.add(pair(errors.get(k).delayed(), errors.get(k).asItComes()));
            }
            table.add(row);
        }
        List<String> mean = new ArrayList<>(List.of("mean"));
        for (double[] sum : sums) {
            mean.add(pair(sum[0], sum[1]));
        }
        table.add(mean);
        return table.text();
    }

    private static OpenTrials.Trial read(Path broad, String name) {
        try {
            return OpenTrials.read(broad, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String pair(double delayed, double asItComes) {
        return String.format(Locale.ROOT, "%.3f (%.3f)", delayed, asItComes);
    }

    /** What the finder finds by activity. */
    static String finder(Path sisfall) {
        MarkdownTable table = new MarkdownTable(List.of(
                "recordings of", "files", "landings", "found", "extra", "files with steps", "files with falls"));
        List<String> codes = List.copyOf(ACTIVITIES.keySet());
        List<FinderTally> tallies =
                codes.parallelStream().map(code -> tally(sisfall, code)).toList();
        for (int k = 0; k < codes.size(); k++) {
            FinderTally t = tallies.get(k);
            table.add(List.of(
                    ACTIVITIES.getOrDefault(codes.get(k), ""),
                    String.valueOf(t.files()),
                    String.valueOf(t.landings()),
                    String.valueOf(t.landings() - t.missed().size()),
                    String.valueOf(t.extra().size()),
                    String.valueOf(t.withSteps()),
                    String.valueOf(t.withFalls())));
        }
        return table.text();
    }

    private static FinderTally tally(Path sisfall, String code) {
        try {
            return FinderTally.ofActivity(sisfall, code, FilterKind.TWO_PASS);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

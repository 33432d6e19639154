package evenfall.report.weeks;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.BlockSession;
import evenfall.report.heed.BodyRegion;
import evenfall.report.statistics.FalseDiscovery;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Holds soreness against the sessions one to three days before: was a place sore more often after sessions with more landings,
 * a higher box or more effort than after the others? Where that is hardly chance, it is asked, with how often it was so and
 * how often not.
 */
final class SorenessQuestions {

    private static final Words WORDS = Words.beside(SorenessQuestions.class);
    private static final int LATEST_DAYS = 3;

    /** From here on a place counts as sore: common practice, no source. */
    private static final int SORE = 3;

    /** Fewer sessions on either side say nothing. */
    private static final int FEWEST = 3;

    private static final double CHANCE = 0.05;

    private SorenessQuestions() {}

    /** A session whose days after were asked for soreness. */
    private record Asked(double landings, double highestM, double effort, Map<String, Integer> soreness) {}

    private record Pattern(String text, double chance) {}

    static List<String> of(Block block, List<DiaryDay> days) {
        List<Asked> asked = asked(block, days);
        Set<String> regions = new LinkedHashSet<>();
        asked.forEach(each -> regions.addAll(each.soreness().keySet()));
        List<Pattern> patterns = new ArrayList<>();
        for (String region : regions) {
            look(patterns, asked, region, "landings", Asked::landings, 0);
            look(patterns, asked, region, "highest", Asked::highestM, 2);
            look(patterns, asked, region, "effort", Asked::effort, 0);
        }
        double[] chances = FalseDiscovery.adjusted(
                patterns.stream().mapToDouble(Pattern::chance).toArray());
        List<String> questions = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            if (chances[i] <= CHANCE) {
                questions.add(patterns.get(i).text());
            }
        }
        return questions;
    }

    private static void look(
            List<Pattern> patterns,
            List<Asked> asked,
            String region,
            String what,
            ToDoubleFunction<Asked> size,
            int decimals) {
        List<Asked> known = asked.stream()
                .filter(each -> !Double.isNaN(size.applyAsDouble(each)))
                .toList();
        if (known.size() < 2 * FEWEST) {
            return;
        }
        double[] sizes = known.stream().mapToDouble(size).sorted().toArray();
        double limit = sizes[sizes.length / 2];
        int[] n = new int[2];
        int[] sore = new int[2];
        for (Asked each : known) {
            int more = size.applyAsDouble(each) >= limit ? 1 : 0;
            n[more]++;
            sore[more] += each.soreness().getOrDefault(region, 0) >= SORE ? 1 : 0;
        }
        if (n[0] < FEWEST || n[1] < FEWEST) {
            return;
        }
        double chance = FisherExact.atLeast(sore[1], n[1], sore[0], n[0]);
        patterns.add(new Pattern(
                WORDS.say(
                        "sore." + what,
                        region,
                        Integer.toString(SORE),
                        Figures.fixed(limit, decimals),
                        Integer.toString(sore[1]),
                        Integer.toString(n[1]),
                        Integer.toString(sore[0]),
                        Integer.toString(n[0])),
                chance));
    }

    private static List<Asked> asked(Block block, List<DiaryDay> days) {
        List<Asked> asked = new ArrayList<>();
        List<LocalDate> sessionDays = block.sessions().stream()
                .map(session -> session.date().day())
                .distinct()
                .toList();
        for (LocalDate day : sessionDays) {
            LocalDate next = sessionDays.stream()
                    .filter(other -> other.isAfter(day))
                    .findFirst()
                    .orElse(LocalDate.MAX);
            Map<String, Integer> soreness = new LinkedHashMap<>();
            boolean any = false;
            for (DiaryDay after : days) {
                long late = ChronoUnit.DAYS.between(day, after.date());
                if (late >= 1
                        && late <= LATEST_DAYS
                        && !after.date().isAfter(next)
                        && !after.soreness().isEmpty()) {
                    any = true;
                    after.soreness().forEach((region, size) -> soreness.merge(BodyRegion.key(region), size, Math::max));
                }
            }
            if (any) {
                asked.add(asked(block, day, soreness));
            }
        }
        return asked;
    }

    private static Asked asked(Block block, LocalDate day, Map<String, Integer> soreness) {
        List<BlockSession> sessions = block.sessions().stream()
                .filter(session -> session.date().day().equals(day))
                .toList();
        double highest = block.landings().stream()
                .filter(landing -> landing.date().day().equals(day))
                .map(BlockLanding::toldHeightM)
                .filter(Objects::nonNull)
                .mapToDouble(SorenessQuestions::size)
                .max()
                .orElse(Double.NaN);
        double[] efforts = sessions.stream()
                .map(BlockSession::effortMinutes)
                .filter(Objects::nonNull)
                .mapToDouble(SorenessQuestions::size)
                .toArray();
        return new Asked(
                sessions.stream().mapToInt(BlockSession::landings).sum(),
                highest,
                efforts.length == 0 ? Double.NaN : Arrays.stream(efforts).sum(),
                soreness);
    }

    private static double size(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}

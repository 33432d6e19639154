package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.BlockSession;
import evenfall.report.block.Chances;
import evenfall.report.block.FormHeight;
import evenfall.report.block.FormHeightTrend;
import evenfall.report.block.SessionFormHeight;
import evenfall.report.block.Trend;
import evenfall.report.form.Form;
import evenfall.report.log.DiaryEntry;
import evenfall.report.statistics.Interval;
import evenfall.report.words.Days;
import evenfall.report.words.Figures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A block in one breath: how many sessions and landings, how often form held, whether anything hurt. */
final class BlockSentence {

    private static final Words WORDS = Words.beside(BlockSentence.class);

    private BlockSentence() {}

    static String of(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        if (block.sessions().isEmpty()) {
            return WORDS.say("block.none");
        }
        List<String> parts = new ArrayList<>();
        LocalDate first = block.sessions().get(0).date().day();
        LocalDate last =
                block.sessions().get(block.sessions().size() - 1).date().day();
        long weeks = ChronoUnit.DAYS.between(first, last) / 7 + 1;
        List<BlockLanding> landings = block.landings();
        String heights = heights(landings);
        parts.add(WORDS.say("block.sessions", block.sessions().size(), weeks));
        parts.add(
                heights.equals(Figures.MISSING)
                        ? WORDS.say("block.landings", landings.size())
                        : WORDS.say("block.landings.from", landings.size(), heights));
        long judged =
                landings.stream().filter(landing -> landing.form() != null).count();
        long held =
                landings.stream().filter(landing -> landing.form() == Form.HELD).count();
        if (judged > 0) {
            parts.add(
                    judged == landings.size()
                            ? WORDS.say("block.form", held)
                            : WORDS.say("block.form.of", held, judged));
        }
        parts.add(lastHeight(block));
        parts.add(formHeight(block));
        parts.add(pain(diary));
        parts.removeIf(String::isEmpty);
        return String.join(" ", parts);
    }

    private static String formHeight(Block block) {
        FormHeight height = block.formHeight();
        if (height.heightM() == null || height.low() == null || height.high() == null) {
            return "";
        }
        FormHeightTrend trend = block.formHeightTrend();
        boolean told = trend.perWeekM() != null && Chances.stands(trend.chanceAmongAll());
        String key = told && trend.verdict().equals(Trend.RISING)
                ? "block.height.rising"
                : told && trend.verdict().equals(Trend.FALLING) ? "block.height.falling" : "block.height";
        return WORDS.say(
                key,
                Figures.fixed(height.heightM(), 2),
                WORDS.say("range", Figures.fixed(height.low(), 2), Figures.fixed(height.high(), 2)),
                Figures.size(trend.perWeekM() == null ? 0.0 : 100 * trend.perWeekM(), 1),
                block.sessions().size(),
                centimetres(trend.interval()));
    }

    /** Both ends, the smaller size first. */
    private static String centimetres(@Nullable Interval interval) {
        if (interval == null) {
            return Figures.MISSING;
        }
        double low = 100 * Math.abs(interval.low());
        double high = 100 * Math.abs(interval.high());
        return WORDS.say("range", Figures.fixed(Math.min(low, high), 1), Figures.fixed(Math.max(low, high), 1));
    }

    /** The last session's own form height beside that of the block, which lags behind; empty where there is none. */
    private static String lastHeight(Block block) {
        List<BlockSession> sessions = block.sessions();
        if (sessions.size() < 2) {
            return "";
        }
        FormHeight last =
                SessionFormHeight.of(block, sessions.get(sessions.size() - 1)).height();
        return last.heightM() == null || last.low() == null || last.high() == null
                ? ""
                : WORDS.say(
                        "block.height.last",
                        Figures.fixed(last.heightM(), 2),
                        WORDS.say("range", Figures.fixed(last.low(), 2), Figures.fixed(last.high(), 2)));
    }

    /** Lowest to highest drop height in words, or {@link Figures#MISSING}. */
    static String heights(List<BlockLanding> landings) {
        List<Double> heights = landings.stream()
                .map(BlockLanding::toldHeightM)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        if (heights.isEmpty()) {
            return Figures.MISSING;
        }
        String low = Figures.height(heights.get(0));
        String high = Figures.height(heights.get(heights.size() - 1));
        return low.equals(high) ? WORDS.say("height.noted", low) : WORDS.say("block.heights", low, high);
    }

    private static String pain(SortedMap<LocalDate, List<DiaryEntry>> diary) {
        TreeSet<LocalDate> days = new TreeSet<>();
        TreeSet<String> regions = new TreeSet<>();
        diary.forEach((day, entries) ->
                entries.forEach(entry -> entry.hurting().keySet().forEach(region -> {
                    days.add(day);
                    regions.add(region);
                })));
        if (diary.isEmpty()) {
            return "";
        }
        return days.isEmpty()
                ? WORDS.say("block.pain.none")
                : WORDS.say("block.pain", days.size(), String.join(", ", regions), Days.words(days.last()));
    }
}

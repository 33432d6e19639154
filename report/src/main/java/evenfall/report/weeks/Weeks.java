package evenfall.report.weeks;

import evenfall.fusion.landing.Side;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.BlockSession;
import evenfall.report.form.Form;
import evenfall.report.log.DiaryEntry;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A block week by week and day by day.
 *
 * @param weeks all weeks from the first session's to the last one's
 * @param loads figures on their effort, for scientists
 * @param heights landings by height, the highest first
 * @param days the diary from the first session on, by day
 * @param cues the cues in order of time
 * @param questions what it raises, as questions
 */
public record Weeks(
        List<WeekCount> weeks,
        List<WeekLoad> loads,
        List<HeightCount> heights,
        List<DiaryDay> days,
        List<CueSpan> cues,
        List<String> questions) {

    /** Nothing is known. */
    public static final Weeks NONE = new Weeks(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public Weeks {
        weeks = List.copyOf(weeks);
        loads = List.copyOf(loads);
        heights = List.copyOf(heights);
        days = List.copyOf(days);
        cues = List.copyOf(cues);
        questions = List.copyOf(questions);
    }

    /**
     * Of a block and its diary.
     *
     * @param diary what holds of the diary, by day
     * @param flatWeeks for so many weeks a result must not have changed to be asked about
     */
    public static Weeks of(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary, int flatWeeks) {
        if (block.sessions().isEmpty()) {
            return NONE;
        }
        List<DiaryDay> days = new ArrayList<>();
        diary.tailMap(block.sessions().get(0).date().day())
                .forEach((day, entries) -> days.add(DiaryDay.of(day, entries)));
        List<String> questions = new ArrayList<>(SorenessQuestions.of(block, days));
        questions.addAll(FlatResults.of(days, flatWeeks));
        SortedMap<LocalDate, Double> efforts = new TreeMap<>();
        diary.forEach(
                (day, entries) -> put(efforts, day, DiaryDay.of(day, entries).effortMinutes()));
        block.sessions().forEach(session -> {
            LocalDate day = session.date().day();
            put(efforts, day, efforts.containsKey(day) ? null : session.effortMinutes());
        });
        List<WeekCount> weeks = weeks(block, efforts);
        return new Weeks(
                weeks,
                loads(block, weeks, efforts, diary),
                heights(block.landings()),
                days,
                cues(block, days),
                questions);
    }

    private static void put(SortedMap<LocalDate, Double> efforts, LocalDate day, @Nullable Double effort) {
        if (effort != null) {
            efforts.put(day, effort);
        }
    }

    private static List<WeekLoad> loads(
            Block block,
            List<WeekCount> weeks,
            SortedMap<LocalDate, Double> efforts,
            SortedMap<LocalDate, List<DiaryEntry>> diary) {
        Set<LocalDate> notNoted = new TreeSet<>();
        block.sessions().forEach(session -> notNoted.add(session.date().day()));
        LocalDate last =
                block.sessions().get(block.sessions().size() - 1).date().day();
        notNoted.removeAll(efforts.keySet());
        return WeekLoad.of(
                weeks.stream().map(WeekCount::monday).toList(),
                efforts,
                notNoted,
                diary.isEmpty() || diary.lastKey().isBefore(last) ? last : diary.lastKey());
    }

    private static List<WeekCount> weeks(Block block, SortedMap<LocalDate, Double> efforts) {
        SortedMap<LocalDate, List<BlockSession>> byWeek = new TreeMap<>();
        for (BlockSession session : block.sessions()) {
            byWeek.computeIfAbsent(monday(session.date().day()), key -> new ArrayList<>())
                    .add(session);
        }
        List<WeekCount> weeks = new ArrayList<>();
        for (LocalDate monday = byWeek.firstKey(); !monday.isAfter(byWeek.lastKey()); monday = monday.plusWeeks(1)) {
            List<BlockSession> sessions = byWeek.getOrDefault(monday, List.of());
            int landings = sessions.stream().mapToInt(BlockSession::landings).sum();
            Double effort = null;
            // All that the diary has, days without a drop too.
            for (double day : efforts.subMap(monday, monday.plusWeeks(1)).values()) {
                effort = (effort == null ? 0 : effort) + day;
            }
            WeekCount before = weeks.isEmpty() ? null : weeks.get(weeks.size() - 1);
            weeks.add(new WeekCount(
                    monday,
                    sessions.size(),
                    landings,
                    effort,
                    before == null ? null : Integer.valueOf(landings - before.landings()),
                    before == null || before.effortMinutes() == null || effort == null
                            ? null
                            : Double.valueOf(effort - before.effortMinutes())));
        }
        return weeks;
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Landings by height, the highest first; those whose height is neither noted nor measured are in none. */
    public static List<HeightCount> heights(List<BlockLanding> landings) {
        SortedMap<Double, int[]> counts = new TreeMap<>(Comparator.reverseOrder());
        for (BlockLanding landing : landings) {
            Double height = landing.toldHeightM();
            if (height != null) {
                int[] count = counts.computeIfAbsent(height, key -> new int[5]);
                count[column(landing.side())]++;
                count[4] += landing.form() == Form.HELD ? 1 : 0;
            }
        }
        List<HeightCount> heights = new ArrayList<>();
        counts.forEach((height, n) -> heights.add(new HeightCount(height, n[0], n[1], n[2], n[3], n[4])));
        return heights;
    }

    private static int column(@Nullable Side side) {
        if (side == null) {
            return 3;
        }
        return switch (side) {
            case LEFT -> 0;
            case RIGHT -> 1;
            case BOTH -> 2;
        };
    }

    private static List<CueSpan> cues(Block block, List<DiaryDay> days) {
        List<CueSpan> cues = new ArrayList<>();
        for (DiaryDay day : days) {
            String cue = day.cue();
            CueSpan last = cues.isEmpty() ? null : cues.get(cues.size() - 1);
            if (cue != null && last != null && last.cue().equalsIgnoreCase(cue)) {
                cues.set(cues.size() - 1, new CueSpan(last.cue(), last.from(), day.date(), 0));
            } else if (cue != null) {
                cues.add(new CueSpan(cue, day.date(), day.date(), 0));
            }
        }
        for (int i = 0; i < cues.size(); i++) {
            CueSpan span = cues.get(i);
            LocalDate until = i + 1 < cues.size() ? cues.get(i + 1).from() : LocalDate.MAX;
            int sessions = (int) block.sessions().stream()
                    .map(session -> session.date().day())
                    .filter(day -> !day.isBefore(span.from()) && day.isBefore(until))
                    .count();
            cues.set(i, new CueSpan(span.cue(), span.from(), span.to(), sessions));
        }
        return cues;
    }
}

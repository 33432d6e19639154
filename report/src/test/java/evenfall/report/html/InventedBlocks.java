package evenfall.report.html;

import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.block.StrapPlace;
import evenfall.report.deciding.NextSessionFinder;
import evenfall.report.deciding.Outlook;
import evenfall.report.deciding.Rules;
import evenfall.report.heed.Standing;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.InventedSessions;
import evenfall.report.weeks.Weeks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Invented blocks for tests of what people see. */
final class InventedBlocks {

    static final LocalDate FIRST = LocalDate.of(2026, 3, 3);

    private static final int FLAT_WEEKS = 4;

    private InventedBlocks() {}

    /** Sessions four days apart, six landings each. */
    static Block block(int sessions) {
        return block(sessions, 6);
    }

    /** Sessions four days apart, so many landings each. */
    static Block block(int sessions, int landingsEach) {
        return block(sessions, landingsEach, Map.of());
    }

    /** The same with sensors that sat elsewhere. */
    static Block block(int sessions, int landingsEach, Map<SessionDate, List<StrapPlace>> straps) {
        List<BlockLanding> landings = new ArrayList<>();
        List<SessionDate> dates = new ArrayList<>();
        for (int i = 0; i < sessions; i++) {
            SessionDate date = new SessionDate(FIRST.plusDays(4L * i), 0);
            dates.add(date);
            landings.addAll(BlockLanding.of(date, InventedSessions.of(landingsEach, 10 + i)));
        }
        return BlockAnalysis.of("invented", dates, landings, Map.of(), straps);
    }

    /** The day after the first session. */
    static SortedMap<LocalDate, List<DiaryEntry>> diary(@Nullable String cue) {
        SortedMap<LocalDate, List<DiaryEntry>> diary = new TreeMap<>();
        diary.put(
                FIRST.plusDays(1),
                List.of(new DiaryEntry(
                        "2026-03-04T19:00:00Z",
                        Map.of("calf-right", 3),
                        Map.of("ankle-left", 0),
                        List.of(),
                        5.0,
                        40.0,
                        Map.of(),
                        cue,
                        null)));
        return diary;
    }

    static DiaryEntry pain(int size) {
        return new DiaryEntry(
                "2026-03-07T19:00:00Z",
                Map.of(),
                Map.of("left ankle", size),
                List.of(),
                null,
                null,
                Map.of(),
                null,
                null);
    }

    /** What stands beside the measures, by the starting rules. */
    static Outlook outlook(Block block, SortedMap<LocalDate, List<DiaryEntry>> diary) {
        Standing standing = Standing.of("no drops above 0.6 m", diary, false);
        Weeks weeks = Weeks.of(block, diary, FLAT_WEEKS);
        return new Outlook(standing, weeks, NextSessionFinder.of(block, null, weeks, diary, standing, Rules.STARTING));
    }
}

package evenfall.report.demo;

import evenfall.ingest.progress.Progress;
import evenfall.report.block.Block;
import evenfall.report.block.BlockLanding;
import evenfall.report.deciding.Choice;
import evenfall.report.deciding.NextSession;
import evenfall.report.deciding.NextSessionFinder;
import evenfall.report.deciding.Rules;
import evenfall.report.heed.Standing;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.result.LoggedBlock;
import evenfall.report.result.LoggedSessions;
import evenfall.report.weeks.HeightCount;
import evenfall.report.weeks.Weeks;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the program says before a session of a log, by the sessions before it and by what the diary held the evening before.
 *
 * @param session the session
 * @param next what was said
 * @param heldM the highest height of the session before at which, and below which, three of four landings were held, m; 0 if none
 * @param lastM the highest height of the session before, m
 * @param topM the highest height of the session, m
 * @param diary its own day
 */
record Advised(SessionDate session, NextSession next, double heldM, double lastM, double topM, List<DiaryEntry> diary) {

    /** A rule that a coach starts with. */
    private static final double HELD = 0.75;

    /** All sessions of an athlete but the first. */
    static List<Advised> all(AthleteFolder athlete) throws IOException {
        LoggedSessions sessions = new LoggedSessions(athlete, Progress.NONE, sentence -> {});
        SortedMap<LocalDate, List<DiaryEntry>> diary = sessions.diary().days();
        List<SessionDate> dates = athlete.sessions();
        List<Advised> advised = new ArrayList<>();
        for (int i = 1; i < dates.size(); i++) {
            SessionDate last = dates.get(i - 1);
            LocalDate day = dates.get(i).day();
            SortedMap<LocalDate, List<DiaryEntry>> before = new TreeMap<>(diary.headMap(day));
            Block block = LoggedBlock.of(athlete, sessions, null, last.day(), sentence -> {});
            NextSession next = NextSessionFinder.of(
                    block,
                    sessions.asStored(last).orElseThrow(),
                    Weeks.of(block, before, Rules.STARTING.flatWeeks()),
                    before,
                    Standing.of(null, before, false),
                    Rules.STARTING);
            List<HeightCount> heights = heights(block, last);
            List<HeightCount> own = heights(LoggedBlock.of(athlete, sessions, day, day, sentence -> {}), dates.get(i));
            advised.add(new Advised(
                    dates.get(i), next, held(heights), top(heights), top(own), diary.getOrDefault(day, List.of())));
        }
        return advised;
    }

    /** The highest box that is in accord with what was said, m; 0 where nobody is to drop. */
    double highestM() {
        Double box = next.higherBoxM();
        return switch (next.argued()) {
            case STOP -> 0;
            case GO_LOWER -> heldM < lastM && heldM > 0 ? heldM : lastM - 0.1;
            case STAY -> heldM;
            case CHANGE_ONE, SAME_PLAN -> box == null ? lastM : Math.max(box, lastM);
        };
    }

    /** Whether going one small step higher is all that was not said: nothing speaks against going on as before. */
    boolean isOneStepOfTheCoach() {
        return next.argued() == Choice.SAME_PLAN
                && next.arguedOption().reasonsAgainst().isEmpty()
                && topM <= heldM + 0.1 + 1e-9;
    }

    private static List<HeightCount> heights(Block block, SessionDate date) {
        List<BlockLanding> landings = block.landings().stream()
                .filter(landing -> landing.date().equals(date))
                .toList();
        return Weeks.heights(landings).stream()
                .sorted(Comparator.comparingDouble(HeightCount::heightM))
                .toList();
    }

    private static double held(List<HeightCount> heights) {
        double held = 0;
        for (HeightCount at : heights) {
            if (at.held() < HELD * at.all()) {
                break;
            }
            held = at.heightM();
        }
        return held;
    }

    private static double top(List<HeightCount> heights) {
        return heights.get(heights.size() - 1).heightM();
    }
}

package evenfall.report.result;

import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.block.Block;
import evenfall.report.block.BlockAnalysis;
import evenfall.report.block.BlockLanding;
import evenfall.report.deciding.NextSessionFinder;
import evenfall.report.deciding.Outlook;
import evenfall.report.deciding.Rules;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import evenfall.report.weeks.Weeks;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Puts together what stands beside a block of the log. */
public final class LoggedOutlook {

    /** So many weeks back a session's decision looks. */
    private static final int WEEKS = 12;

    private LoggedOutlook() {}

    /**
     * The outlook after a block.
     *
     * @param tell told, in a sentence, what a person should know
     */
    public static Outlook of(AthleteFolder athlete, LoggedSessions sessions, Block block, Consumer<String> tell)
            throws IOException {
        return of(athlete, sessions, block, last(sessions, block), tell);
    }

    /**
     * The outlook after the last session of the log, by it and by stored results of the weeks before.
     *
     * @param session the session with its verdicts
     * @return empty if it is not the last one: then what came next is in the log
     */
    public static Optional<Outlook> after(
            AthleteFolder athlete, LoggedSessions sessions, SessionDate date, Session session, Consumer<String> tell)
            throws IOException {
        List<SessionDate> dates = athlete.sessions();
        if (!dates.isEmpty() && date.compareTo(dates.get(dates.size() - 1)) < 0) {
            return Optional.empty();
        }
        LoggedSessions silent = sessions.silent();
        List<SessionDate> shown = new ArrayList<>();
        List<BlockLanding> landings = new ArrayList<>();
        for (SessionDate earlier : dates) {
            if (earlier.compareTo(date) < 0
                    && !earlier.day().isBefore(date.day().minusWeeks(WEEKS))) {
                Optional<Session> stored = asStored(silent, earlier);
                if (stored.isPresent()) {
                    shown.add(earlier);
                    landings.addAll(BlockLanding.of(earlier, stored.get()));
                }
            }
        }
        shown.add(date);
        landings.addAll(BlockLanding.of(date, session));
        Block block = BlockAnalysis.withoutMeasures(athlete.id(), shown, landings, Map.of());
        return Optional.of(of(athlete, sessions, block, session, tell));
    }

    private static Outlook of(
            AthleteFolder athlete, LoggedSessions sessions, Block block, @Nullable Session last, Consumer<String> tell)
            throws IOException {
        LoggedDiary diary = sessions.diary();
        Rules rules = Rules.of(athlete, tell).missingSome(sessions.limitsUnreadable());
        Weeks weeks = Weeks.of(block, diary.days(), rules.flatWeeks());
        return new Outlook(
                diary.standing(),
                weeks,
                NextSessionFinder.of(block, last, weeks, diary.days(), diary.standing(), rules));
    }

    private static @Nullable Session last(LoggedSessions sessions, Block block) throws IOException {
        if (block.sessions().isEmpty()) {
            return null;
        }
        SessionDate date = block.sessions().get(block.sessions().size() - 1).date();
        return asStored(sessions.silent(), date).orElse(null);
    }

    /** Whoever asks for a session that cannot be read is told; for what stands beside it the others do. */
    private static Optional<Session> asStored(LoggedSessions sessions, SessionDate date) {
        try {
            return sessions.asStored(date);
        } catch (IOException | UnusableInputException e) {
            return Optional.empty();
        }
    }
}

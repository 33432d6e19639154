package evenfall.report.result;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sessions by their stored results of this version; nothing is made again for them, and those that cannot be read are left out. */
final class StoredSessions {

    /** What is usual is told by the newest of the same foot and height; these landings are enough for several of each. */
    private static final int ENOUGH = 400;

    private StoredSessions() {}

    /**
     * The newest of these sessions that hold enough landings, oldest first.
     *
     * @param dates in order of time
     */
    static List<Session> newest(AthleteFolder athlete, List<SessionDate> dates) {
        LoggedSessions sessions = new LoggedSessions(athlete, Progress.NONE, sentence -> {});
        List<Session> newest = new ArrayList<>();
        int landings = 0;
        for (int i = dates.size() - 1; i >= 0 && landings < ENOUGH; i--) {
            Optional<Session> session = stored(sessions, dates.get(i));
            if (session.isPresent()) {
                newest.add(0, session.get());
                landings += session.get().landings().size();
            }
        }
        return newest;
    }

    /** Whoever asks for a session that cannot be read is told; here the others do. */
    private static Optional<Session> stored(LoggedSessions sessions, SessionDate date) {
        try {
            return sessions.asStored(date);
        } catch (IOException | UnusableInputException e) {
            return Optional.empty();
        }
    }
}

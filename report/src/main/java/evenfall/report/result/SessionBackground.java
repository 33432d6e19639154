package evenfall.report.result;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recording.UnusableInputException;
import evenfall.report.film.Film;
import evenfall.report.film.FilmClock;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.FilmEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What the log knows to hold a session against: the sessions before it, by their stored results (nothing is made again for
 * them), and its film.
 */
public final class SessionBackground {

    /** What is usual is told by the newest of the same foot and height; these are enough for several of each. */
    private static final int ENOUGH = 400;

    private SessionBackground() {}

    /**
     * The background of one session.
     *
     * @param tell told in a sentence of damaged notes on films
     */
    public static Background of(AthleteFolder athlete, SessionDate date, Consumer<String> tell) throws IOException {
        return new Background(earlier(athlete, date), film(athlete, date, tell), noteCommand(athlete, date));
    }

    private static String noteCommand(AthleteFolder athlete, SessionDate date) {
        String log = String.valueOf(athlete.folder().getParent());
        String plain = log.matches("[A-Za-z0-9._/\\\\:-]+") ? log : "\"" + log + "\"";
        return "note --log " + plain + " --athlete " + athlete.id() + " --date " + date;
    }

    /** The film of a session as it was noted last; null where none was. */
    public static @Nullable Film film(AthleteFolder athlete, SessionDate date, Consumer<String> tell)
            throws IOException {
        List<FilmEntry> films = athlete.films(date).all(tell);
        if (films.isEmpty()) {
            return null;
        }
        FilmEntry last = films.get(films.size() - 1);
        return new Film(last.path(), new FilmClock(last.startsS(), last.driftPpm()));
    }

    private static List<Session> earlier(AthleteFolder athlete, SessionDate date) throws IOException {
        LoggedSessions sessions = new LoggedSessions(athlete, Progress.NONE, sentence -> {});
        List<SessionDate> dates = athlete.sessions();
        List<Session> earlier = new ArrayList<>();
        int landings = 0;
        for (int i = dates.size() - 1; i >= 0 && landings < ENOUGH; i--) {
            if (dates.get(i).compareTo(date) < 0) {
                Optional<Session> session = stored(sessions, dates.get(i));
                if (session.isPresent()) {
                    earlier.add(0, session.get());
                    landings += session.get().landings().size();
                }
            }
        }
        return earlier;
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

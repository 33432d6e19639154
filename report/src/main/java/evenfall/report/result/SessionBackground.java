package evenfall.report.result;

import evenfall.report.deciding.Rules;
import evenfall.report.film.Film;
import evenfall.report.film.FilmClock;
import evenfall.report.heed.PastPain;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.FilmEntry;
import evenfall.report.log.SessionDate;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What the log knows to hold a session against: the sessions before it, by their stored results (nothing is made again for
 * them), and its film.
 */
public final class SessionBackground {

    private SessionBackground() {}

    /**
     * The background of one session.
     *
     * @param diary the athlete's, which whoever read the session has read
     * @param tell told in a sentence of damaged notes on films
     */
    public static Background of(AthleteFolder athlete, SessionDate date, LoggedDiary diary, Consumer<String> tell)
            throws IOException {
        return new Background(
                earlier(athlete, date),
                film(athlete, date, tell),
                noteCommand(athlete, date),
                PastPain.before(date.day(), diary.days()),
                // What cannot be read of the rules is told where they are what is shown.
                Rules.of(athlete, sentence -> {}).heldShare(),
                null);
    }

    /** The sessions before one, by their stored results, oldest first. */
    public static List<Session> earlier(AthleteFolder athlete, SessionDate date) throws IOException {
        return StoredSessions.newest(
                athlete,
                athlete.sessions().stream()
                        .filter(other -> other.compareTo(date) < 0)
                        .toList());
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
}

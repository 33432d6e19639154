package evenfall.report.session;

import evenfall.report.film.Film;
import evenfall.report.heed.PastPain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a session is looked at against.
 *
 * @param earlier the athlete's earlier sessions, oldest first, without traces
 * @param film the film of the session, or null where none was noted
 * @param noteCommand the command that notes something of this session, without what it notes; null outside a log
 * @param pastPain when it hurt last before that day, or null
 * @param heldShare in this share of the landings form must be held at a height, of 1, by the coach's rules; null where
 *     they are not known
 * @param asOf date and time in words for a page that is kept, and does not know what is entered later; null for one that is
 *     made when it is asked for
 */
public record Background(
        List<Session> earlier,
        @Nullable Film film,
        @Nullable String noteCommand,
        @Nullable PastPain pastPain,
        @Nullable Double heldShare,
        @Nullable String asOf) {

    /** Nothing is known. */
    public static final Background NONE = new Background(List.of(), null, null, null, null, null);

    public Background {
        earlier = List.copyOf(earlier);
    }

    /** The same for a page that is kept. */
    public Background keptAt(String words) {
        return new Background(earlier, film, noteCommand, pastPain, heldShare, words);
    }
}

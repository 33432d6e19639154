package evenfall.report.html;

import evenfall.ingest.words.Words;
import evenfall.report.film.Film;
import evenfall.report.html.view.FilmView;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.words.Figures;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The film beside a session. */
final class FilmViews {

    private static final Words WORDS = Words.beside(FilmViews.class);

    private FilmViews() {}

    static FilmView of(Session session, Background background) {
        String command = background.noteCommand() == null ? "" : background.noteCommand();
        Film film = background.film();
        if (film == null) {
            return new FilmView("", "", "", "", "", command, marks(session));
        }
        Path path = Path.of(film.path());
        return new FilmView(
                String.valueOf(path.getFileName()),
                path.toUri().toASCIIString(),
                film.path(),
                String.format(Locale.ROOT, "%.3f", film.clock().startsS()),
                String.format(Locale.ROOT, "%.1f", film.clock().driftPpm()),
                command,
                marks(session));
    }

    /** The heel drops of the opening routine: those before anybody landed. */
    private static List<FilmView.FilmMark> marks(Session session) {
        double until = session.landings().stream()
                .mapToDouble(event -> event.landing().moments().contactS())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        List<FilmView.FilmMark> marks = new ArrayList<>();
        for (double at : session.analysis().heelDropsS()) {
            if (at < until) {
                marks.add(new FilmView.FilmMark(
                        String.format(Locale.ROOT, "%.3f", at),
                        WORDS.say("film.heelDrop", marks.size() + 1, Figures.clock(at))));
            }
        }
        return marks;
    }
}

package evenfall.report.html;

import evenfall.report.film.Film;
import evenfall.report.html.view.FilmView;
import evenfall.report.session.Background;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The film beside a session. */
final class FilmViews {

    private FilmViews() {}

    static FilmView of(Background background) {
        String command = background.noteCommand() == null ? "" : background.noteCommand();
        Film film = background.film();
        if (film == null) {
            return new FilmView("", "", "", "", "", command, List.of());
        }
        Path path = Path.of(film.path());
        return new FilmView(
                String.valueOf(path.getFileName()),
                path.toUri().toASCIIString(),
                film.path(),
                String.format(Locale.ROOT, "%.3f", film.clock().startsS()),
                String.format(Locale.ROOT, "%.1f", film.clock().driftPpm()),
                command,
                List.of());
    }
}

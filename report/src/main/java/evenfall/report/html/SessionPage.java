package evenfall.report.html;

import evenfall.report.html.view.SessionView;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import java.io.IOException;

/**
 * The session page: one HTML file that stands alone. Reads from top to bottom without script, prints, and works from 420
 * pixels of width on.
 */
public final class SessionPage {

    private SessionPage() {}

    /** What the page shows, in words and pictures. */
    public static SessionView view(Session session, Background background) {
        return SessionViews.of(session, background);
    }

    /**
     * Writes the page of a session; to be kept as UTF-8.
     *
     * @param background earlier sessions and the film, as far as they are known
     * @throws IOException if {@code out} fails
     */
    public static void write(Session session, Background background, Appendable out) throws IOException {
        out.append(Pages.render("session.jte", view(session, background), "table.js", "film.js", "page.js"));
    }
}

package evenfall.report.html.view;

import java.util.List;

/**
 * The film beside the session; every field is empty where no film was noted.
 *
 * @param name file name
 * @param address where it lies, as an address a browser can open
 * @param path where it lies
 * @param startsS when it begins on the recording's clock, s, as a plain number
 * @param driftPpm how much faster its clock runs, as a plain number
 * @param command the beginning of the line that keeps film and clock in the log, or empty outside a log
 * @param marks moments that can be seen in the film besides landings
 */
public record FilmView(
        String name,
        String address,
        String path,
        String startsS,
        String driftPpm,
        String command,
        List<FilmMark> marks) {

    /**
     * A moment that can be seen in the film.
     *
     * @param atS on the recording's clock, s, as a plain number
     * @param words what it is
     */
    public record FilmMark(String atS, String words) {}
}

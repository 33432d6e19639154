package evenfall.report.film;

/**
 * A film of a session.
 *
 * @param path where it lies on this machine
 */
public record Film(String path, FilmClock clock) {}

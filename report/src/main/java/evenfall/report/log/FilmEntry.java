package evenfall.report.log;

/**
 * A film of a session and its clock; the last one of a session holds.
 *
 * @param writtenAt when it was noted, ISO 8601 with offset
 * @param path where the film lies
 * @param startsS when it begins on the recording's clock, s; negative if it ran first
 * @param driftPpm how much faster its clock runs than the recording's, parts in a million
 */
public record FilmEntry(String writtenAt, String path, double startsS, double driftPpm) {}

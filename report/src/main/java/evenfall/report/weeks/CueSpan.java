package evenfall.report.weeks;

import java.time.LocalDate;

/**
 * A cue or drill that was in force.
 *
 * @param cue its words
 * @param from the day it was first named
 * @param to the last day it was named before another was
 * @param sessions sessions from its first day until another was named
 */
public record CueSpan(String cue, LocalDate from, LocalDate to, int sessions) {}

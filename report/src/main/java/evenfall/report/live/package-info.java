/**
 * Landings while they are recorded: the data so far is analysed again and again, and each landing is given once. Enter at
 * {@link evenfall.report.live.LiveLandings}.
 */
@NullMarked
package evenfall.report.live;

import org.jspecify.annotations.NullMarked;

/**
 * Landings while they are recorded, each given once. Enter at {@link evenfall.report.live.LiveLandings}.
 */
@NullMarked
package evenfall.report.live;

import org.jspecify.annotations.NullMarked;

package evenfall.report.deciding;

import evenfall.report.heed.Standing;
import evenfall.report.weeks.Weeks;

/**
 * What stands beside the measures of a block from a log.
 *
 * @param standing what stands first
 * @param weeks the block week by week and day by day
 * @param next what speaks for and against each way on
 */
public record Outlook(Standing standing, Weeks weeks, NextSession next) {}

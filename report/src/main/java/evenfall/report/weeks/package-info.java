/**
 * What stands beside the measures of a block: landings counted by height and foot, effort, soreness, pain, results and cues, week
 * by week and day by day, and questions that they raise. No cause is claimed and no risk is told. Entry is {@link
 * evenfall.report.weeks.Weeks}.
 */
@NullMarked
package evenfall.report.weeks;

import org.jspecify.annotations.NullMarked;

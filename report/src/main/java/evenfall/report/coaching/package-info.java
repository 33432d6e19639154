/**
 * What is said while somebody trains: after a landing ({@link evenfall.report.coaching.Talk},
 * {@link evenfall.report.coaching.LandingRemark}), through the opening routine
 * ({@link evenfall.report.coaching.RoutineGuide}), and until sensors know where they are worn
 * ({@link evenfall.report.coaching.PlaceGuide}). Nothing here prints or speaks.
 */
@NullMarked
package evenfall.report.coaching;

import org.jspecify.annotations.NullMarked;

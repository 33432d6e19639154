/**
 * Results as JSON: the document of one session's landings, written by {@link evenfall.report.json.LandingsDocument} and
 * read back by {@link evenfall.report.json.AnalysisReader}, and the document of a block. What could not be measured is
 * null; NaN is never written.
 */
@NullMarked
package evenfall.report.json;

import org.jspecify.annotations.NullMarked;

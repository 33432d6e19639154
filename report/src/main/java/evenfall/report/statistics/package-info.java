/**
 * The statistics blocks are compared by, on plain numbers: medians, slopes over time, regression within sessions, a
 * chance that falls with height, how many findings of many are chance, and second opinions for scientists. Nothing here knows a
 * landing.
 */
@NullMarked
package evenfall.report.statistics;

import org.jspecify.annotations.NullMarked;

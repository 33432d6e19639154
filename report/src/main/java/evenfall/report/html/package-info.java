/**
 * Pages: one self-contained HTML file each, nothing loaded from outside, readable without script. Entries are {@link
 * evenfall.report.html.SessionPage} and {@link evenfall.report.html.BlockPage}. Builders turn results into the records
 * of {@code view}, in which every number is rounded and worded; templates only place them.
 */
@NullMarked
package evenfall.report.html;

import org.jspecify.annotations.NullMarked;

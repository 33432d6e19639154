/**
 * Pages on paper: a flow of headings, paragraphs, tables and pictures as PDF, with real text in the bundled typeface, tagged
 * for those who listen to it (ISO 32000-1, 14.7 and 14.8). Entry is {@link evenfall.report.paper.Paper}.
 */
@NullMarked
package evenfall.report.paper;

import org.jspecify.annotations.NullMarked;

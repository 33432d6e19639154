/**
 * Charts as inline SVG. One place holds every colour, line and letter ({@code Ink}); text stays text, samples are thinned
 * to what a pixel can show, and the same numbers give the same bytes.
 */
@NullMarked
package evenfall.report.chart;

import org.jspecify.annotations.NullMarked;

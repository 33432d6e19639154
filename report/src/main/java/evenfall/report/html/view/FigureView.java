package evenfall.report.html.view;

/**
 * One measured figure in words.
 *
 * @param label what it is
 * @param term end of the id of its explanation
 * @param value the value with its side and unit, or that it was not measured
 * @param error one standard deviation of its error with a sign before it, or empty
 * @param limit its limit in words, or empty where form is not judged by it
 * @param usual what is usual for this athlete, or empty
 * @param size its size as a plain number, for sorting, or empty
 * @param over the word that it is beyond its limit, or empty
 */
public record FigureView(
        String label, String term, String value, String error, String limit, String usual, String size, String over) {}

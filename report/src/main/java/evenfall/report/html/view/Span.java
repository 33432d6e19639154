package evenfall.report.html.view;

/**
 * A part of a sentence.
 *
 * @param words as they stand in it
 * @param about code of the measure they name, or empty
 */
public record Span(String words, String about) {}

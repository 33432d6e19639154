package evenfall.report.html.view;

import java.util.List;

/**
 * The figures that answer one question.
 *
 * @param question the question
 * @param answer its answer in a word or two, or empty where nothing is judged
 * @param figures what it is answered by
 */
public record FigureGroup(String question, String answer, List<FigureView> figures) {}

package evenfall.report.html.view;

import java.util.List;

/** The figures that answer one question. */
public record FigureGroup(String question, List<FigureView> figures) {}

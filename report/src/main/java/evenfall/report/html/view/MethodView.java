package evenfall.report.html.view;

import java.util.List;

/**
 * How it was measured.
 *
 * @param lines a sentence each
 * @param findings what was found wrong or doubtful
 * @param limits the limits of form in force
 */
public record MethodView(List<String> lines, List<String> findings, List<String> limits) {}

package evenfall.report.form;

/**
 * Why a question failed (or nearly): names the measure, the side in words, the value and the limit.
 *
 * @param question the question
 * @param measure the measure's name as in results, such as {@code pelvicRotationDeg.change}
 * @param text one clause for a person
 * @param over whether the limit is passed (false: only on the edge, or within the athlete's own limit but past the one a
 *     coach starts from)
 * @param onEdge whether the value lies within one sigma of the limit
 */
public record Reason(FormQuestion question, String measure, String text, boolean over, boolean onEdge) {}

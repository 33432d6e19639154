package evenfall.report.html.view;

import org.jspecify.annotations.Nullable;

/**
 * A link to another page and what stands beside it.
 *
 * @param file where it leads, or null for words that lead nowhere
 */
public record LinkView(@Nullable String file, String words, String remark) {}

package evenfall.report.html.view;

/** A link to another page and what stands beside it. */
public record LinkView(String file, String words, String remark) {}

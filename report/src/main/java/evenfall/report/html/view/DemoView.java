package evenfall.report.html.view;

import java.util.List;

/**
 * The demo's first page.
 *
 * @param heard what was heard while the last session was recorded live
 */
public record DemoView(String title, String place, String blockFile, List<LinkView> sessions, List<String> heard) {}

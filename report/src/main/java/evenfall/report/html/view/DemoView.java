package evenfall.report.html.view;

import java.util.List;

/** The demo's first page. */
public record DemoView(String title, String place, String blockFile, List<LinkView> sessions) {}

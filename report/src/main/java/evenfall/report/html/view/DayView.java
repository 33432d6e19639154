package evenfall.report.html.view;

import java.util.List;

/** One day of the diary, a sentence each. */
public record DayView(String day, List<String> lines) {}

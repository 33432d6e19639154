package evenfall.report.table;

import evenfall.ingest.finding.Finding;
import evenfall.report.check.CheckedFile;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What a check of files found, as text for a person at a terminal. */
public final class CheckText {

    private CheckText() {}

    /** Writes one paragraph a file. */
    public static void write(List<CheckedFile> files, Appendable out) throws IOException {
        boolean first = true;
        for (CheckedFile file : files) {
            if (!first) {
                out.append('\n');
            }
            first = false;
            out.append(file.file())
                    .append(String.format(
                            Locale.ROOT,
                            ": %d samples over %.1f s at %.1f Hz%n",
                            file.samples(),
                            file.durationS(),
                            file.rateHz()));
            for (Finding finding : file.findings()) {
                out.append("  ").append(SessionText.finding(finding)).append('\n');
            }
            if (file.findings().isEmpty()) {
                out.append("  nothing wrong or doubtful was found\n");
            }
        }
    }
}

package evenfall.report.table;

import evenfall.ingest.finding.Finding;
import evenfall.ingest.words.Words;
import evenfall.report.check.CheckedFile;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** What a check of files found, as text for a person at a terminal. */
public final class CheckText {

    private static final Words WORDS = Words.beside(CheckText.class);

    private CheckText() {}

    /** Writes one paragraph a file. */
    public static void write(List<CheckedFile> files, Appendable out) throws IOException {
        boolean first = true;
        for (CheckedFile file : files) {
            if (!first) {
                out.append('\n');
            }
            first = false;
            out.append(WORDS.say(
                            "check.file",
                            file.file(),
                            file.samples(),
                            String.format(Locale.ROOT, "%.1f", file.durationS()),
                            String.format(Locale.ROOT, "%.1f", file.rateHz())))
                    .append('\n');
            for (Finding finding : file.findings()) {
                out.append("  ").append(SessionText.finding(finding)).append('\n');
            }
            if (file.findings().isEmpty()) {
                out.append("  ").append(WORDS.say("check.nothing")).append('\n');
            }
        }
    }
}

package evenfall.report.command;

import evenfall.report.csv.CsvStyle;
import evenfall.report.html.SessionPage;
import evenfall.report.json.LandingsDocument;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import evenfall.report.table.SessionCsv;
import evenfall.report.table.SessionText;
import java.io.IOException;

/** Writes a session in one of its formats. */
final class SessionPrinter {

    private SessionPrinter() {}

    /**
     * Writes it.
     *
     * @param background what the page looks at it against; the other formats do without
     */
    static void print(Session session, Background background, OutputFormat format, Appendable out) throws IOException {
        switch (format) {
            case TABLE -> SessionText.write(session, out);
            case CSV -> SessionCsv.write(session, CsvStyle.PLAIN, out);
            case SPREADSHEET -> SessionCsv.write(session, CsvStyle.SPREADSHEET, out);
            case SPREADSHEET_COMMA -> SessionCsv.write(session, CsvStyle.SPREADSHEET_COMMA, out);
            case JSON -> out.append(LandingsDocument.of(session));
            case HTML -> SessionPage.write(session, background, out);
            case PDF, VTT, MOTION_BIDS -> throw new IllegalArgumentException(format + " is no form of this kind");
        }
    }
}

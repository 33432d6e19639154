package evenfall.report.table;

import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.fusion.landing.StepDirection;
import evenfall.report.csv.CsvStyle;
import evenfall.report.csv.CsvWriter;
import evenfall.report.form.Form;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.log.LandingNote;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A session as a table with one row an event: the JSON names with groups flattened. Files that are in no log have the
 * same columns, those of the log empty.
 */
public final class SessionCsv {

    private static final List<String> EVENT =
            List.of("index", "kind", "count", "takeoffS", "contactS", "peakS", "lowestS", "settledS");
    private static final List<String> VERDICT =
            List.of("clipped", "stepDirection", "footSuggested", "form", "reasons", "flags");
    private static final List<String> NOTES =
            List.of("date", "side", "height_m", "surface", "shoes", "leave_out", "remark");

    private SessionCsv() {}

    /** Writes the header and all events. */
    public static void write(Session session, CsvStyle style, Appendable out) throws IOException {
        CsvWriter csv = new CsvWriter(out, style);
        for (String name : EVENT) {
            csv.text(name);
        }
        for (Measure measure : MeasureList.all()) {
            csv.text(measure.name());
        }
        for (String name : VERDICT) {
            csv.text(name);
        }
        for (String name : NOTES) {
            csv.text(name);
        }
        csv.end();
        for (SessionLanding event : session.landings()) {
            event(csv, event);
            note(csv, session.date(), event.note());
            csv.end();
        }
    }

    private static void event(CsvWriter csv, SessionLanding event) throws IOException {
        Landing landing = event.landing();
        Moments moments = landing.moments();
        csv.number((double) landing.index()).text(landing.kind().code());
        csv.number(landing.count() == null ? null : Double.valueOf(landing.count()));
        csv.number(moments.takeoffS()).number(moments.contactS()).number(moments.peakS());
        csv.number(moments.lowestS()).number(moments.settledS());
        Measures measures = landing.measures();
        for (Measure measure : MeasureList.all()) {
            csv.number(measures == null ? null : measure.of(measures));
        }
        verdict(csv, measures, event.verdict());
        csv.text(event.flags().stream().map(LandingFlag::code).collect(Collectors.joining(" ")));
    }

    private static void verdict(CsvWriter csv, @Nullable Measures measures, @Nullable FormVerdict verdict)
            throws IOException {
        if (measures == null || verdict == null) {
            csv.text(null).text(null).text(null).text(null).text(null);
            return;
        }
        StepDirection direction = measures.balance().stepDirection();
        Side foot = measures.balance().footSuggested();
        Form form = verdict.form();
        csv.text(Boolean.toString(measures.impact().clipped()));
        csv.text(direction == null ? null : direction.code());
        csv.text(foot == null ? null : foot.code());
        csv.text(form == null ? null : form.code());
        csv.text(verdict.reasons().stream().map(Reason::text).collect(Collectors.joining("; ")));
    }

    private static void note(CsvWriter csv, @Nullable String date, LandingNote note) throws IOException {
        Side side = note.side();
        csv.text(date).text(side == null ? null : side.code()).number(note.heightM());
        csv.text(note.surface()).text(note.shoes()).text(note.leaveOut()).text(note.remark());
    }
}

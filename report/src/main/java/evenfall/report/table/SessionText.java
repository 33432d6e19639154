package evenfall.report.table;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Side;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormVerdict;
import evenfall.report.form.Reason;
import evenfall.report.form.StandardWords;
import evenfall.report.log.LandingNote;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A session as text for a person at a terminal: units, sides in words, reasons under each landing. */
public final class SessionText {

    private static final Words WORDS = Words.beside(SessionText.class);

    /** Said wherever form is shown. */
    public static final String CAUTION = WORDS.say("caution");

    private SessionText() {}

    /** Writes the session. */
    public static void write(Session session, Appendable out) throws IOException {
        OutlookText.first(session.standing(), out);
        out.append(opening(session)).append("\n\n");
        if (!session.landings().isEmpty()) {
            TextGrid grid = new TextGrid();
            grid.row(
                    WORDS.say("session.column.number"),
                    WORDS.say("session.column.contact"),
                    WORDS.say("session.column.drop"),
                    WORDS.say("session.column.peak"),
                    WORDS.say("session.column.braking"),
                    WORDS.say("session.column.turned"),
                    WORDS.say("session.column.leaned"),
                    WORDS.say("session.column.feet"),
                    WORDS.say("session.column.folded"),
                    WORDS.say("session.column.form"));
            for (SessionLanding event : session.landings()) {
                event(grid, event);
            }
            grid.write(out);
            out.append('\n');
        }
        for (Finding finding : session.analysis().findings()) {
            out.append(finding(finding)).append('\n');
        }
        for (String limit : StandardWords.of(session.standard())) {
            out.append(limit).append('\n');
        }
        out.append(CAUTION).append('\n');
    }

    /** One landing as one line, for a stream of landings. */
    public static String line(SessionLanding event) {
        StringBuilder line = new StringBuilder();
        line.append(event.landing().index())
                .append("  ")
                .append(clock(event.landing().moments().contactS()));
        Measures measures = event.landing().measures();
        if (measures == null) {
            return line.append("  ").append(other(event)).toString();
        }
        line.append("  drop ").append(Cells.metres(measures.fall().dropHeightM()));
        line.append(", peak ").append(Cells.peak(measures.impact()));
        line.append(", form ").append(form(event.verdict()));
        String reasons = reasons(event.verdict());
        return reasons.isEmpty()
                ? line.toString()
                : line.append(": ").append(reasons).toString();
    }

    private static String opening(Session session) {
        RecordingAnalysis analysis = session.analysis();
        long landings = session.landings().stream()
                .filter(event -> event.landing().kind() == EventKind.LANDING)
                .count();
        StringBuilder text = new StringBuilder();
        if (session.athlete() != null) {
            text.append(session.athlete()).append(", ").append(session.date()).append(": ");
        }
        return text.append(WORDS.say(
                        analysis.mounting().containsKey(Place.UPPER_BACK) ? "session.opening.both" : "session.opening",
                        landings,
                        clock(analysis.durationS()),
                        String.format(Locale.ROOT, "%.1f", analysis.rateHz())))
                .toString();
    }

    private static void event(TextGrid grid, SessionLanding event) {
        String index = Integer.toString(event.landing().index());
        String contact = clock(event.landing().moments().contactS());
        Measures measures = event.landing().measures();
        if (measures == null) {
            grid.row(index, contact, other(event));
        } else {
            grid.row(
                    index,
                    contact,
                    Cells.metres(measures.fall().dropHeightM()),
                    Cells.peak(measures.impact()),
                    Cells.g(measures.braking().meanBrakingG()),
                    Cells.sided(measures.posture().pelvicRotation(), "left", "right"),
                    Cells.sided(measures.posture().trunkLean(), "right", "left"),
                    Cells.overFeet(measures.balance().overFeet()),
                    Cells.sided(measures.posture().spineFlexion(), "forward", "back"),
                    form(event.verdict()));
        }
        FormVerdict verdict = event.verdict();
        if (verdict != null) {
            for (Reason reason : verdict.reasons()) {
                grid.line("     " + reason.text());
            }
        }
        String notes = notes(event);
        if (!notes.isEmpty()) {
            grid.line("     " + notes);
        }
    }

    private static String other(SessionLanding event) {
        if (event.landing().kind() == EventKind.FALL) {
            return WORDS.say("session.fall");
        }
        Integer count = event.landing().count();
        return count == null ? WORDS.say("session.steps.uncounted") : WORDS.say("session.steps", count);
    }

    private static String form(@Nullable FormVerdict verdict) {
        return verdict == null || verdict.form() == null
                ? Cells.MISSING
                : verdict.form().code();
    }

    private static String reasons(@Nullable FormVerdict verdict) {
        return verdict == null
                ? ""
                : verdict.reasons().stream().map(Reason::text).collect(Collectors.joining("; "));
    }

    private static String notes(SessionLanding event) {
        StringBuilder text = new StringBuilder();
        for (LandingFlag flag : event.flags()) {
            text.append(WORDS.say("flag." + flag.code())).append("; ");
        }
        LandingNote note = event.note();
        if (note.side() != null) {
            text.append(WORDS.say("session.foot." + note.side().code())).append("; ");
        }
        Side suggested = event.sideSuggested() ? event.side() : null;
        if (suggested != null) {
            text.append(WORDS.say("foot.suggested." + suggested.code())).append("; ");
        }
        if (event.approved()) {
            text.append(WORDS.say("approved")).append("; ");
        }
        if (note.heightM() != null) {
            append(text, "session.from", Cells.metres(note.heightM()));
        }
        append(text, "session.surface", note.surface());
        append(text, "session.shoes", note.shoes());
        append(text, "session.left.out", note.leftOut() ? note.leaveOut() : null);
        append(text, "session.remark", note.remark());
        String all = text.toString().strip();
        return all.endsWith(";") ? all.substring(0, all.length() - 1) : all;
    }

    private static void append(StringBuilder text, String key, @Nullable String value) {
        if (value != null) {
            text.append(WORDS.say(key, value)).append("; ");
        }
    }

    /** One finding as one line. */
    public static String finding(Finding finding) {
        Place sensor = finding.sensor();
        Double at = finding.atS();
        return finding.severity().code()
                + (sensor == null ? "" : ", " + sensor.words())
                + (at == null ? "" : WORDS.say(sensor == Place.UPPER_BACK ? "finding.at.own" : "finding.at", clock(at)))
                + ": "
                + finding.message();
    }

    /** Minutes and seconds, such as {@code 0:41.7}. */
    static String clock(double seconds) {
        long tenths = Math.round(seconds * 10);
        return String.format(Locale.ROOT, "%d:%02d.%d", tenths / 600, tenths / 10 % 60, tenths % 10);
    }
}

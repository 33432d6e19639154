package evenfall.report.motionbids;

import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Measures;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.landing.Side;
import evenfall.ingest.words.Words;
import evenfall.report.csv.PlainNumber;
import evenfall.report.form.Form;
import evenfall.report.measure.Measure;
import evenfall.report.measure.MeasureList;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Events in order of time, one row each, with every measure, and what the columns mean. */
final class EventTable {

    private static final Words WORDS = Words.beside(EventTable.class);

    private static final String MISSING = "n/a";

    private EventTable() {}

    static void write(Session session, Appendable out) throws IOException {
        List<String> names = new ArrayList<>(List.of("onset", "duration", "trial_type", "landing"));
        names.addAll(
                List.of("takeoffS", "peakS", "lowestS", "settledS", "side", "height_m", "leave_out", "form", "flags"));
        MeasureList.all().forEach(measure -> names.add(measure.name()));
        out.append(String.join("\t", names)).append('\n');
        for (SessionLanding event : session.landings()) {
            out.append(String.join("\t", cells(event))).append('\n');
        }
    }

    private static List<String> cells(SessionLanding event) {
        Moments moments = event.landing().moments();
        Double settled = moments.settledS();
        Side side = event.note().side();
        Form form = event.verdict() == null ? null : event.verdict().form();
        List<String> cells = new ArrayList<>();
        cells.add(number(moments.contactS()));
        cells.add(number(settled == null ? null : Double.valueOf(Math.max(0, settled - moments.contactS()))));
        cells.add(event.landing().kind().code());
        cells.add(Integer.toString(event.landing().index()));
        cells.add(number(moments.takeoffS()));
        cells.add(number(moments.peakS()));
        cells.add(number(moments.lowestS()));
        cells.add(number(settled));
        cells.add(side == null ? MISSING : side.code());
        cells.add(number(event.note().heightM()));
        cells.add(text(event.note().leaveOut()));
        cells.add(form == null ? MISSING : form.code());
        cells.add(text(event.flags().stream().map(LandingFlag::code).collect(Collectors.joining(" "))));
        Measures measures = event.landing().measures();
        for (Measure measure : MeasureList.all()) {
            cells.add(number(measures == null ? null : measure.of(measures)));
        }
        return cells;
    }

    /** The columns described, as the standard wants them beside the table. */
    static Map<String, Object> columns() {
        Map<String, Object> columns = new LinkedHashMap<>();
        columns.put("onset", column(WORDS.say("event.onset"), "s"));
        columns.put("duration", column(WORDS.say("event.duration"), "s"));
        columns.put("trial_type", column(WORDS.say("event.kind"), null));
        columns.put("landing", column(WORDS.say("event.landing"), null));
        for (String moment : List.of("takeoffS", "peakS", "lowestS", "settledS")) {
            columns.put(moment, column(WORDS.say("event.moment"), "s"));
        }
        columns.put("side", column(WORDS.say("event.side"), null));
        columns.put("height_m", column(WORDS.say("event.height"), "m"));
        columns.put("leave_out", column(WORDS.say("event.out"), null));
        columns.put("form", column(WORDS.say("event.form"), null));
        columns.put("flags", column(WORDS.say("event.flags"), null));
        for (Measure measure : MeasureList.all()) {
            columns.put(
                    measure.name(),
                    column(WORDS.say("event.measure"), measure.unit().isEmpty() ? null : measure.unit()));
        }
        return columns;
    }

    private static Map<String, Object> column(String description, @Nullable String units) {
        Map<String, Object> column = new LinkedHashMap<>();
        column.put("Description", description);
        if (units != null) {
            column.put("Units", units);
        }
        return column;
    }

    private static String number(@Nullable Double value) {
        return value == null || !Double.isFinite(value) ? MISSING : PlainNumber.of(value);
    }

    private static String text(@Nullable String text) {
        String flat = text == null ? "" : text.replaceAll("\\s+", " ").strip();
        return flat.isEmpty() ? MISSING : flat;
    }
}

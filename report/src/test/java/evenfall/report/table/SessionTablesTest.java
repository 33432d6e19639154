package evenfall.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.orientation.OrientationTrack;
import evenfall.ingest.recording.SensorStream;
import evenfall.report.csv.CsvStyle;
import evenfall.report.json.LandingsDocument;
import evenfall.report.log.LandingNote;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SessionTablesTest {

    @Test
    void everyNumberOfTheDocument_isInTheTableUnderItsFlattenedName() throws IOException {
        Session session = InventedSessions.of(3, 11);
        JsonNode landings = JsonMapper.builder()
                .build()
                .readTree(LandingsDocument.of(session))
                .path("landings");
        List<NamedCsvRecord> rows = csv(session);

        assertThat(rows).hasSize(3);
        for (int i = 0; i < 3; i++) {
            NamedCsvRecord row = rows.get(i);
            int compared = 0;
            for (String name : row.getHeader()) {
                JsonNode value = landings.path(i);
                for (String part : name.split("\\.", -1)) {
                    value = value.path(part);
                }
                value = value.isObject() ? value.path("value") : value;
                if (value.isNumber()) {
                    assertThat(Double.parseDouble(row.getField(name))).as(name).isEqualTo(value.asDouble());
                    compared++;
                }
            }
            // Eight of the event, 11 scalars, 42 of angles, 4 of shifts, 6 over the feet, steps, 7 sigmas; some null.
            assertThat(compared).isGreaterThan(50);
            assertThat(row.getField("form"))
                    .isEqualTo(landings.path(i).path("form").asString());
        }
    }

    /** As a spreadsheet of a country with decimal commas reads it: a general reader, and Java's own German numbers. */
    @Test
    void aSpreadsheetWithDecimalCommas_readsTheSameNumbers_andRunsNothing() throws Exception {
        Session plain = InventedSessions.of(3, 11);
        List<SessionLanding> events = new ArrayList<>();
        for (SessionLanding event : plain.landings()) {
            String formula = List.of("=2+5+cmd|' /C calc'!A0", "-1;+1", "\t@SUM(1,2)")
                    .get(event.landing().index() - 1);
            events.add(new SessionLanding(
                    event.landing(),
                    event.verdict(),
                    event.trace(),
                    new LandingNote(event.note().side(), event.note().heightM(), formula, formula, null, formula)));
        }
        Session session = InventedSessions.session(events, List.of(), List.of());
        StringBuilder text = new StringBuilder();
        SessionCsv.write(session, CsvStyle.SPREADSHEET_COMMA, text);
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .fieldSeparator(';')
                .detectBomHeader(true)
                .ofNamedCsvRecord(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)))) {
            reader.forEach(rows::add);
        }
        List<NamedCsvRecord> same = csv(session);

        assertThat(rows).hasSize(3);
        int decimals = 0;
        for (int i = 0; i < rows.size(); i++) {
            assertThat(rows.get(i).getHeader()).isEqualTo(same.get(i).getHeader());
            for (String name : same.get(i).getHeader()) {
                String cell = rows.get(i).getField(name);
                String expected = same.get(i).getField(name);
                if (expected.matches("-?\\d+(\\.\\d+)?")) {
                    ParsePosition end = new ParsePosition(0);
                    Number number = NumberFormat.getInstance(Locale.GERMANY).parse(cell, end);
                    assertThat(end.getIndex()).as(cell).isEqualTo(cell.length());
                    assertThat(number.doubleValue()).as(name).isEqualTo(Double.parseDouble(expected));
                    decimals += cell.contains(",") ? 1 : 0;
                } else {
                    assertThat(cell).isEqualTo(expected).doesNotMatch("(?s)[=+\\-@\t\r\n].*");
                }
            }
        }
        assertThat(decimals).isGreaterThan(100);
    }

    @Test
    void stepsAndFalls_haveNoMeasures() throws IOException {
        List<SessionLanding> events = new ArrayList<>(InventedSessions.of(1, 12).landings());
        events.add(new SessionLanding(
                new Landing(2, EventKind.STEPS, new Moments(null, 9, 9.1, null, null), 14, null, Set.of()),
                null,
                null,
                LandingNote.NONE));
        NamedCsvRecord steps =
                csv(InventedSessions.session(events, List.of(), List.of())).get(1);

        assertThat(steps.getField("kind")).isEqualTo("steps");
        assertThat(steps.getField("count")).isEqualTo("14");
        assertThat(steps.getField("peakG")).isEmpty();
        assertThat(steps.getField("form")).isEmpty();
    }

    @Test
    void textForAPerson_hasUnitsSidesInWordsAndTheCaution() throws IOException {
        StringBuilder text = new StringBuilder();
        SessionText.write(InventedSessions.of(6, 13), text);

        assertThat(text.toString())
                .contains("6 landings")
                .contains(" m ")
                .contains(" g ")
                .contains("right ")
                .contains("°")
                .contains("trunk leaned right")
                .contains("knees, feet or head")
                .doesNotContain("null")
                .doesNotContain("NaN");
        assertThat(text.toString().lines()).noneMatch(line -> line.endsWith(" "));
    }

    @Test
    void anEmptySession_saysSo() throws IOException {
        StringBuilder text = new StringBuilder();
        SessionText.write(InventedSessions.session(List.of(), List.of(), List.of()), text);

        assertThat(text.toString()).contains("No landing");
    }

    @Test
    void orientation_isOneRowASample() throws IOException {
        SensorStream.Builder builder = new SensorStream.Builder();
        float[] wxyz = new float[4 * 4];
        for (int i = 0; i < 4; i++) {
            builder.add(100 + 0.005 * i, 0, 0, 9.81, 0, 0, 0);
            wxyz[4 * i] = (float) Math.sqrt(0.5);
            wxyz[4 * i + 2] = (float) -Math.sqrt(0.5);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        OrientationCsv.write(builder.build(), new OrientationTrack(wxyz), bytes);

        assertThat(bytes.toString(StandardCharsets.US_ASCII).lines())
                .containsExactly(
                        "t_s,qw,qx,qy,qz",
                        "0.000000,0.7071068,0.0000000,-0.7071068,0.0000000",
                        "0.005000,0.7071068,0.0000000,-0.7071068,0.0000000",
                        "0.010000,0.7071068,0.0000000,-0.7071068,0.0000000",
                        "0.015000,0.7071068,0.0000000,-0.7071068,0.0000000");
    }

    private static List<NamedCsvRecord> csv(Session session) throws IOException {
        StringBuilder text = new StringBuilder();
        SessionCsv.write(session, CsvStyle.PLAIN, text);
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(text.toString())) {
            reader.forEach(rows::add);
        }
        return rows;
    }
}

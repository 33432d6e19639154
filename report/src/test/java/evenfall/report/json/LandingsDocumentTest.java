package evenfall.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.LandingFlag;
import evenfall.fusion.landing.Moments;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.FindingCode;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.report.form.FormStandard;
import evenfall.report.log.DiaryEntry;
import evenfall.report.log.LandingNote;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The names of fields are those of the project's contract. */
class LandingsDocumentTest {

    private static final List<String> LANDING = List.of(
            "index",
            "kind",
            "takeoffS",
            "contactS",
            "peakS",
            "lowestS",
            "settledS",
            "flightS",
            "impactSpeedMS",
            "dropHeightM",
            "peakG",
            "peakUpperBackG",
            "clipped",
            "riseMs",
            "loadingRateGPerS",
            "depthM",
            "brakingS",
            "meanBrakingG",
            "collapseDegPerS",
            "trunkFlexionDeg",
            "trunkLeanDeg",
            "pelvicRotationDeg",
            "pelvicTiltDeg",
            "pelvicObliquityDeg",
            "twistDeg",
            "spineFlexionDeg",
            "lateralShiftM",
            "foreAftShiftM",
            "overFeetM",
            "stepsAfter",
            "stepDirection",
            "footSuggested",
            "sigma",
            "form",
            "reasons",
            "flags");

    private final JsonMapper mapper = JsonMapper.builder().build();

    @Test
    void aDocument_hasTheFieldsOfTheContract() {
        JsonNode root = mapper.readTree(LandingsDocument.of(InventedSessions.of(3, 1)));

        assertThat(root.path("program").asString()).isEqualTo("evenfall");
        assertThat(root.path("version").isString()).isTrue();
        JsonNode recording = root.path("recording");
        assertThat(recording.propertyNames())
                .contains("durationS", "rateHz", "sensors", "clock", "mounting", "findings");
        JsonNode landing = root.path("landings").path(0);
        assertThat(landing.propertyNames()).containsAll(LANDING);
        assertThat(landing.path("trunkLeanDeg").propertyNames())
                .containsExactlyInAnyOrder("contact", "peak", "lowest", "max", "change", "sigma");
        assertThat(landing.path("lateralShiftM").propertyNames()).containsExactlyInAnyOrder("value", "sigma");
        assertThat(landing.path("overFeetM").propertyNames())
                .containsExactlyInAnyOrder(
                        "foreAftContact",
                        "foreAftLowest",
                        "lateralContact",
                        "lateralLowest",
                        "sigmaForeAft",
                        "sigmaLateral");
        assertThat(landing.path("sigma").propertyNames())
                .containsExactlyInAnyOrder(
                        "contactS",
                        "flightS",
                        "impactSpeedMS",
                        "dropHeightM",
                        "peakG",
                        "depthM",
                        "meanBrakingG",
                        "collapseDegPerS");
    }

    @Test
    void aLoggedSession_addsAthleteDateNotesAndDiary() {
        DiaryEntry diary = new DiaryEntry(
                "2026-03-02T18:00:00+01:00",
                Map.of("left-calf", 3),
                Map.of(),
                List.of("swelling"),
                6.0,
                70.0,
                Map.of("reach", "31 cm"),
                "quiet feet",
                null);
        Session base = InventedSessions.of(2, 2);
        Session logged = Session.of(
                "invented",
                "2026-03-02",
                List.of("pelvis.csv"),
                base.analysis(),
                FilterKind.TWO_PASS,
                FormStandard.STARTING,
                Map.of(2, new LandingNote(null, 0.6, null, "barefoot", "slipped", null)),
                Set.of(1),
                List.of(diary));
        JsonNode root = mapper.readTree(LandingsDocument.of(logged));

        assertThat(root.path("athlete").asString()).isEqualTo("invented");
        assertThat(root.path("date").asString()).isEqualTo("2026-03-02");
        JsonNode note = root.path("notes").path(0);
        assertThat(note.path("landing").asInt()).isEqualTo(2);
        assertThat(note.path("leaveOut").asString()).isEqualTo("slipped");
        assertThat(note.path("side").isNull()).isTrue();
        JsonNode entry = root.path("diary").path(0);
        assertThat(entry.path("soreness").path("left-calf").asInt()).isEqualTo(3);
        assertThat(entry.path("results").path("reach").asString()).isEqualTo("31 cm");
        assertThat(entry.path("note").isNull()).isTrue();
    }

    @Test
    void whatIsMissing_isNullAndNeverNotANumber() {
        Session session = InventedSessions.of(1, 3);
        RecordingAnalysis analysis = session.analysis();
        RecordingAnalysis odd = new RecordingAnalysis(
                Double.NaN,
                200,
                null,
                Map.of(),
                List.of(new Finding(FindingCode.GAP, Severity.WARNING, "A gap.", Place.PELVIS, null)),
                List.of(),
                List.of(new Landing(
                        1, EventKind.FALL, new Moments(null, 1, 1.1, null, null), null, null, Set.of(LandingFlag.GAP))),
                Map.of());
        String text = LandingsDocument.of(Session.of(
                null, null, List.of(), odd, FilterKind.LIVE, FormStandard.STARTING, Map.of(), Set.of(), List.of()));
        JsonNode root = mapper.readTree(text);

        assertThat(text).doesNotContain("NaN");
        assertThat(root.path("recording").path("durationS").isNull()).isTrue();
        assertThat(root.path("recording").path("clock").isNull()).isTrue();
        assertThat(root.path("recording").path("findings").path(0).path("atS").isNull())
                .isTrue();
        JsonNode fall = root.path("landings").path(0);
        assertThat(fall.path("kind").asString()).isEqualTo("fall");
        assertThat(fall.path("settledS").isNull()).isTrue();
        assertThat(fall.has("peakG")).isFalse();
        assertThat(fall.path("flags").path(0).asString()).isEqualTo("gap");
        assertThat(analysis.landings()).hasSize(1);
    }

    @Test
    void aDocument_isReadBackToTheSameAnalysis() {
        Session session = InventedSessions.of(5, 4);
        String document = LandingsDocument.of(session);
        RecordingAnalysis read = AnalysisReader.read(document, ProgramVersion.version(), session.filter())
                .orElseThrow();
        List<Landing> landings = new ArrayList<>(read.landings());
        Session again = Session.of(
                session.athlete(),
                session.date(),
                session.sources(),
                read,
                session.filter(),
                FormStandard.STARTING,
                notes(session),
                Set.of(),
                session.diary());

        assertThat(landings).hasSize(5);
        JsonNode before = mapper.readTree(document);
        JsonNode after = mapper.readTree(LandingsDocument.of(again));
        assertThat(after.path("recording")).isEqualTo(before.path("recording"));
        for (String field : LANDING) {
            if (!Set.of("form", "reasons", "flags").contains(field)) {
                assertThat(after.path("landings").path(4).get(field))
                        .as(field)
                        .isEqualTo(before.path("landings").path(4).get(field));
            }
        }
        ClockMap clock = session.analysis().clock();
        assertThat(read.clock()).isEqualTo(clock);
    }

    @Test
    void aDocumentOfAnotherVersionOrHalfOfOne_isNotTaken() {
        Session session = InventedSessions.of(1, 5);
        String document = LandingsDocument.of(session);

        assertThat(AnalysisReader.read(document, "0.0.1", session.filter())).isEmpty();
        assertThat(AnalysisReader.read(document, ProgramVersion.version(), FilterKind.MADGWICK))
                .isEmpty();
        assertThat(AnalysisReader.read(
                        document.substring(0, document.length() / 2), ProgramVersion.version(), session.filter()))
                .isEmpty();
        assertThat(AnalysisReader.read(
                        document.replace("\"peakG\" : ", "\"peakG\" : null, \"was\" : "),
                        ProgramVersion.version(),
                        session.filter()))
                .isEmpty();
        assertThat(AnalysisReader.version(document)).contains(ProgramVersion.version());
    }

    @Test
    void oneLanding_isOneLine() {
        String line = LandingsDocument.line(InventedSessions.of(1, 6).landings().get(0));

        assertThat(line).doesNotContain("\n");
        assertThat(mapper.readTree(line).path("index").asInt()).isEqualTo(1);
    }

    private static Map<Integer, LandingNote> notes(Session session) {
        return session.landings().stream()
                .collect(java.util.stream.Collectors.toMap(
                        event -> event.landing().index(), event -> event.note()));
    }
}

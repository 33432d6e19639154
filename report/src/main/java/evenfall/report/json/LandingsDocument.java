package evenfall.report.json;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.rotation.Quaternion;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.place.Place;
import evenfall.report.csv.PlainNumber;
import evenfall.report.log.DiaryEntry;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a session as the document of its landings. */
public final class LandingsDocument {

    private LandingsDocument() {}

    /** The whole document, indented; with athlete, date, notes and diary where the session stands in a log. */
    public static String of(Session session) {
        ObjectNode root = JsonTree.object();
        root.put("program", ProgramVersion.PROGRAM);
        root.put("version", ProgramVersion.version());
        root.put("filter", session.filter().code());
        JsonText.putAll(root, "sources", session.sources());
        boolean logged = session.athlete() != null || session.date() != null;
        if (logged) {
            JsonText.put(root, "athlete", session.athlete());
            JsonText.put(root, "date", session.date());
            StandingNode.write(root.putObject("heed"), session.standing());
        }
        recording(root.putObject("recording"), session.analysis());
        ArrayNode landings = root.putArray("landings");
        for (SessionLanding landing : session.landings()) {
            landings.add(LandingNode.of(landing));
        }
        LimitNode.write(root.putArray("limits"), session.standard());
        if (logged) {
            notes(root.putArray("notes"), session);
            ArrayNode diary = root.putArray("diary");
            session.diary().forEach(entry -> diary(diary.addObject(), entry));
        }
        return JsonText.pretty(root);
    }

    /** One landing as one line of JSON without a line end, for a stream of landings. */
    public static String line(SessionLanding landing) {
        return JsonTree.write(LandingNode.of(landing), false);
    }

    private static void recording(ObjectNode node, RecordingAnalysis analysis) {
        JsonText.put(node, "durationS", analysis.durationS());
        JsonText.put(node, "rateHz", analysis.rateHz());
        ArrayNode sensors = node.putArray("sensors");
        ObjectNode mountings = JsonTree.object();
        for (Place place : Place.values()) {
            Mounting mounting = analysis.mounting().get(place);
            if (mounting != null) {
                mounting(mountings.putObject(place.code()), mounting);
            }
            if (mounting != null || place == Place.PELVIS || analysis.clock() != null) {
                sensors.add(place.code());
            }
        }
        ClockMap clock = analysis.clock();
        if (clock == null) {
            node.putNull("clock");
        } else {
            ObjectNode clockNode = node.putObject("clock");
            JsonText.put(clockNode, "offsetS", clock.offsetS());
            JsonText.put(clockNode, "driftPpm", clock.driftPpm());
            JsonText.put(clockNode, "sigmaMs", clock.sigmaMs());
            clockNode.put("method", clock.method());
        }
        node.set("mounting", mountings);
        ArrayNode heelDrops = node.putArray("heelDropsS");
        analysis.heelDropsS().forEach(at -> heelDrops.add(PlainNumber.rounded(at)));
        ArrayNode findings = node.putArray("findings");
        analysis.findings().forEach(finding -> finding(findings.addObject(), finding));
    }

    private static void mounting(ObjectNode node, Mounting mounting) {
        node.put("method", mounting.method().code());
        JsonText.put(node, "sigmaDeg", mounting.sigmaDeg());
        Quaternion q = mounting.segmentFromSensor();
        ArrayNode wxyz = node.putArray("segmentFromSensor");
        wxyz.add(q.w()).add(q.x()).add(q.y()).add(q.z());
    }

    /** Writes one finding into {@code node}. */
    static void finding(ObjectNode node, Finding finding) {
        node.put("code", finding.code().code());
        node.put("severity", finding.severity().code());
        node.put("message", finding.message());
        Place sensor = finding.sensor();
        JsonText.put(node, "sensor", sensor == null ? null : sensor.code());
        JsonText.put(node, "atS", finding.atS());
    }

    private static void notes(ArrayNode array, Session session) {
        for (SessionLanding landing : session.landings()) {
            if (!landing.note().saysNothing()) {
                ObjectNode node = array.addObject();
                node.put("landing", landing.landing().index());
                LandingNode.note(node, landing.note());
            }
        }
    }

    private static void diary(ObjectNode node, DiaryEntry entry) {
        node.put("writtenAt", entry.writtenAt());
        numbers(node.putObject("soreness"), entry.soreness());
        numbers(node.putObject("pain"), entry.pain());
        JsonText.putAll(node, "signs", entry.signs());
        JsonText.put(node, "effort", entry.effort());
        JsonText.put(node, "minutes", entry.minutes());
        ObjectNode results = node.putObject("results");
        entry.results().forEach(results::put);
        JsonText.put(node, "cue", entry.cue());
        JsonText.put(node, "note", entry.note());
        JsonText.put(node, "corrects", entry.corrects());
    }

    private static void numbers(ObjectNode node, Map<String, Integer> regions) {
        regions.forEach((region, number) -> node.put(region, number.intValue()));
    }
}

package evenfall.report.html;

import evenfall.fusion.alignment.ClockMap;
import evenfall.fusion.alignment.Mounting;
import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.ingest.finding.Finding;
import evenfall.ingest.finding.Severity;
import evenfall.ingest.place.Place;
import evenfall.ingest.words.Words;
import evenfall.report.html.view.MethodView;
import evenfall.report.session.AlikeLandings;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.setting.Settings;
import evenfall.report.words.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How a session was measured, in words, and how healthy its recording is. */
final class MethodWords {

    private static final Words WORDS = Words.beside(MethodWords.class);

    private MethodWords() {}

    static MethodView of(Session session) {
        RecordingAnalysis analysis = session.analysis();
        List<String> lines = new ArrayList<>();
        lines.add(WORDS.say("method.files", String.join(", ", session.sources())));
        lines.add(WORDS.say(
                "method.recording", Figures.fixed(analysis.durationS() / 60, 1), Figures.fixed(analysis.rateHz(), 1)));
        ClockMap clock = analysis.clock();
        if (clock != null) {
            lines.add(WORDS.say("method.clock", clock.method(), Figures.fixed(clock.sigmaMs(), 1)));
        }
        for (Place place : Place.values()) {
            Mounting mounting = analysis.mounting().get(place);
            if (mounting != null) {
                lines.add(mounting(place, mounting));
            }
        }
        lines.add(WORDS.say("method.filter", session.filter().code()));
        lines.add(WORDS.say("method.zero"));
        lines.add(WORDS.say("method.sides"));
        lines.add(WORDS.say("method.height"));
        lines.add(WORDS.say("method.error"));
        lines.add(WORDS.say("usual.some", AlikeLandings.MOST, AlikeLandings.FEWEST));
        lines.add(WORDS.say("method.version", ProgramVersion.PROGRAM, ProgramVersion.version()));
        return new MethodView(
                lines,
                analysis.findings().stream().map(MethodWords::finding).toList(),
                limits(session.standard().settings()));
    }

    /** One line: clean, or the gravest finding and how many more there are. */
    static String health(List<Finding> findings) {
        List<Finding> doubts = findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .sorted((a, b) -> b.severity().compareTo(a.severity()))
                .toList();
        if (!doubts.isEmpty()) {
            return WORDS.say("health.doubtful", doubts.get(0).message(), findings.size() - 1)
                    .strip();
        }
        return findings.isEmpty() ? WORDS.say("health.clean") : WORDS.say("health.notes", findings.size());
    }

    private static String mounting(Place place, Mounting mounting) {
        String words = place.words();
        String key = "mounting." + mounting.method().code();
        return WORDS.say(
                "method.mounting",
                words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1),
                WORDS.knows(key) ? WORDS.say(key) : mounting.method().code(),
                Figures.fixed(mounting.sigmaDeg(), 1));
    }

    private static String finding(Finding finding) {
        Place sensor = finding.sensor();
        Double at = finding.atS();
        return WORDS.say(
                "finding",
                WORDS.say("severity." + finding.severity().code()),
                sensor == null ? "" : WORDS.say("finding.sensor", sensor.words()),
                at == null
                        ? ""
                        : WORDS.say(sensor == Place.UPPER_BACK ? "finding.at.own" : "finding.at", Figures.clock(at)),
                finding.message());
    }

    private static List<String> limits(Settings limits) {
        return List.of(
                WORDS.say("limit.braking", Figures.fixed(limits.value("mean-braking"), 1)),
                WORDS.say(
                        "limit.even",
                        Figures.fixed(limits.value("pelvic-rotation"), 0),
                        Figures.fixed(limits.value("pelvic-obliquity"), 0),
                        Figures.fixed(limits.value("trunk-lean"), 0),
                        Figures.fixed(limits.value("twist"), 0),
                        Figures.fixed(limits.value("beside-feet"), 2)),
                WORDS.say(
                        "limit.feet",
                        Figures.fixed(limits.value("behind-feet"), 2),
                        Figures.fixed(limits.value("steps-back"), 0),
                        Figures.fixed(limits.value("tilt-back"), 0)),
                WORDS.say(
                        "limit.spine",
                        Figures.fixed(limits.value("spine-flexion"), 0),
                        Figures.fixed(limits.value("collapse"), 0)),
                WORDS.say("limit.verdict"));
    }
}

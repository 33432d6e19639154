package evenfall.fusion.accuracy;

import evenfall.fusion.analysis.RecordingAnalysis;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

/** Errors on the simulated sessions, session by session and by what they have in common. */
final class SimulatedRun {

    static final String ALL = "all";
    static final String WELL_PREPARED = "good opening, straps that stay";
    static final String BADLY_PREPARED = "poor opening or a strap that moves";
    static final String WITHOUT_GAPS = "without gaps";
    static final String WITH_GAPS = "with gaps";
    static final String ALONE = "pelvis sensor alone";

    private final List<SimulatedSession> sessions;
    private final Map<String, RecordingAnalysis> analyses = new HashMap<>();
    private final Map<String, LandingErrors> bySession = new LinkedHashMap<>();
    private final Map<String, LandingErrors> groups = new LinkedHashMap<>();

    private SimulatedRun(List<SimulatedSession> sessions) {
        this.sessions = sessions;
    }

    /** Analyses all sessions, with the upper back's sensor and without it. */
    static SimulatedRun of(Path landings) {
        SimulatedRun run = new SimulatedRun(SimulatedSession.all(landings));
        List<RecordingAnalysis> analyses =
                run.sessions.parallelStream().map(SimulatedSession::analyse).toList();
        for (int k = 0; k < run.sessions.size(); k++) {
            SimulatedSession session = run.sessions.get(k);
            run.analyses.put(session.name(), analyses.get(k));
            run.bySession.put(session.name(), session.errors(analyses.get(k)));
        }
        run.group(ALL, session -> true);
        run.group(
                "all but s4, where a gap hides a contact",
                session -> !session.name().equals("s4"));
        run.group(WELL_PREPARED, SimulatedSession::wellPrepared);
        run.group(BADLY_PREPARED, session -> !session.wellPrepared());
        run.group(WITHOUT_GAPS, session -> !session.hasGaps());
        run.group(WITH_GAPS, SimulatedSession::hasGaps);
        run.groups.put(
                ALONE,
                LandingErrors.together(run.sessions.parallelStream()
                        .map(session -> session.errors(session.analyseAlone()))
                        .toList()));
        return run;
    }

    private void group(String name, Predicate<SimulatedSession> which) {
        List<LandingErrors> parts = new ArrayList<>();
        for (SimulatedSession session : sessions) {
            LandingErrors errors = bySession.get(session.name());
            if (which.test(session) && errors != null) {
                parts.add(errors);
            }
        }
        groups.put(name, LandingErrors.together(parts));
    }

    /** Errors at some landings of a session, named by their contacts as the truth tells them, s. */
    LandingErrors errors(SimulatedSession session, Set<Double> contacts) {
        List<TrueLanding> truths = session.landings().stream()
                .filter(t -> contacts.stream()
                        .anyMatch(contact -> Math.abs(contact - session.pelvisStartS() - t.contactS()) < 1e-6))
                .toList();
        return LandingErrors.of(Objects.requireNonNull(analyses.get(session.name())), truths);
    }

    List<SimulatedSession> sessions() {
        return sessions;
    }

    /** In the order of the sessions. */
    Map<String, LandingErrors> bySession() {
        return bySession;
    }

    /** All, and what sessions have in common. */
    Map<String, LandingErrors> groups() {
        return groups;
    }

    /** All sessions together. */
    LandingErrors all() {
        return LandingErrors.together(bySession.values());
    }
}

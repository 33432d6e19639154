package evenfall.report.result;

import evenfall.fusion.analysis.RecordingAnalysis;
import evenfall.fusion.landing.LandingTrace;
import evenfall.fusion.orientation.FilterKind;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.json.AnalysisReader;
import evenfall.report.json.LandingsDocument;
import evenfall.report.log.SessionFolder;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What was measured of one session, kept beside its raw files: it can be thrown away at any time and made again, so nobody
 * is kept from seeing results by a disk that takes no more.
 */
final class KeptResults {

    private static final Words WORDS = Words.beside(KeptResults.class);

    /** What a session in the log is always analysed with. */
    static final FilterKind FILTER = FilterKind.TWO_PASS;

    private final SessionFolder folder;
    private final Consumer<String> tell;

    /** Of a session; {@code tell} is told in a sentence why results are made again or could not be kept. */
    KeptResults(SessionFolder folder, Consumer<String> tell) {
        this.folder = folder;
        this.tell = tell;
    }

    /** What is kept; empty where nothing of this version is. */
    Optional<RecordingAnalysis> read() throws IOException {
        return read(folder.result(LoggedSessions.DOCUMENT));
    }

    /** What is kept with the signals that were kept with it; empty where either is not. */
    Optional<RecordingAnalysis> readWithTraces() throws IOException {
        Optional<String> document = folder.result(LoggedSessions.DOCUMENT);
        Optional<RecordingAnalysis> results = read(document);
        Optional<Map<Integer, LandingTrace>> traces =
                results.isEmpty() ? Optional.empty() : StoredTraces.read(folder, document.orElseThrow());
        return traces.map(each -> results.orElseThrow().withTraces(each));
    }

    private Optional<RecordingAnalysis> read(Optional<String> document) {
        if (document.isEmpty()) {
            tell.accept(WORDS.say("results.missing", folder.date()));
            return Optional.empty();
        }
        Optional<RecordingAnalysis> results = AnalysisReader.read(document.get(), ProgramVersion.version(), FILTER);
        if (results.isEmpty()) {
            String version = AnalysisReader.version(document.get()).orElse(ProgramVersion.version());
            tell.accept(
                    version.equals(ProgramVersion.version())
                            ? WORDS.say("results.unread", folder.date())
                            : WORDS.say("results.old", folder.date(), version));
        }
        return results;
    }

    /** Keeps results that were made again, and takes away the page that showed others. */
    void keep(List<String> names, RecordingAnalysis analysis) {
        try {
            String document = document(names, analysis);
            folder.storeResult(LoggedSessions.DOCUMENT, document);
            folder.removeResult(LoggedSessions.PAGE);
            StoredTraces.store(folder, document, analysis.traces());
        } catch (IOException e) {
            unstored(e);
        }
    }

    /** Stores the results of a recording that ended just now. */
    void store(List<String> names, RecordingAnalysis analysis) {
        try {
            folder.storeResult(LoggedSessions.DOCUMENT, document(names, analysis));
        } catch (IOException e) {
            unstored(e);
        }
    }

    private void unstored(IOException why) {
        tell.accept(WORDS.say("results.unstored", folder.date(), String.valueOf(why.getMessage())));
    }

    /** Keeps the signals of results that are stored: without them pages only take longer. */
    void keepTraces(RecordingAnalysis analysis) {
        try {
            Optional<String> document = folder.result(LoggedSessions.DOCUMENT);
            if (document.isPresent()) {
                StoredTraces.store(folder, document.get(), analysis.traces());
            }
        } catch (IOException e) {
            tell.accept(WORDS.say("charts.unstored", folder.date(), String.valueOf(e.getMessage())));
        }
    }

    /** What is stored is what was measured; whoever reads it judges it anew, so here it is by what a coach starts from. */
    static String document(List<String> names, RecordingAnalysis analysis) {
        return LandingsDocument.of(
                Session.of(null, null, names, analysis, FILTER, FormStandard.STARTING, Map.of(), Set.of(), List.of()));
    }
}

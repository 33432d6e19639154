package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteEntry;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.DamagedFileException;
import evenfall.report.log.Manifest;
import evenfall.report.log.RawFile;
import evenfall.report.log.SessionDate;
import evenfall.report.log.TrainingLog;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** What a log holds, as lists for a person at a terminal; no result and no recording is opened for them. */
public final class LogText {

    private static final Words WORDS = Words.beside(LogText.class);

    private LogText() {}

    /**
     * Writes one line an athlete.
     *
     * @param damaged told, in a sentence, of each file that had to be passed over
     */
    public static void athletes(TrainingLog log, Consumer<String> damaged, Appendable out) throws IOException {
        List<String> athletes = log.athletes();
        if (athletes.isEmpty()) {
            out.append(WORDS.say("log.empty")).append('\n');
            return;
        }
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("log.athlete"),
                WORDS.say("log.name"),
                WORDS.say("log.sessions"),
                WORDS.say("log.last"),
                WORDS.say("log.limit"));
        for (String id : athletes) {
            AthleteFolder athlete = log.athlete(id);
            Optional<AthleteEntry> who = athlete.lastWho(damaged);
            List<SessionDate> sessions = athlete.sessions();
            String name = who.map(AthleteEntry::name).orElse(null);
            String limit = who.map(AthleteEntry::clinicianLimit).orElse(null);
            grid.row(
                    id,
                    name == null ? Cells.MISSING : name,
                    Integer.toString(sessions.size()),
                    sessions.isEmpty()
                            ? Cells.MISSING
                            : sessions.get(sessions.size() - 1).toString(),
                    limit == null ? "" : limit);
        }
        grid.write(out);
    }

    /**
     * Writes one line a session.
     *
     * @param damaged told, in a sentence, of each file that had to be passed over
     */
    public static void sessions(AthleteFolder athlete, Consumer<String> damaged, Appendable out) throws IOException {
        List<SessionDate> sessions = athlete.sessions();
        if (sessions.isEmpty()) {
            out.append(WORDS.say("log.noSession", athlete.id())).append('\n');
            return;
        }
        TextGrid grid = new TextGrid();
        grid.row(WORDS.say("log.session"), WORDS.say("log.from"), WORDS.say("log.storedAt"));
        for (SessionDate date : sessions) {
            try {
                Manifest manifest = athlete.session(date).manifest();
                grid.row(date.toString(), source(manifest), manifest.storedAt());
            } catch (DamagedFileException e) {
                damaged.accept(String.valueOf(e.getMessage()));
                grid.row(date.toString(), WORDS.say("log.damaged"));
            }
        }
        grid.write(out);
    }

    private static String source(Manifest manifest) {
        return manifest.kind().equals(Manifest.WIRE)
                ? WORDS.say("log.live")
                : manifest.files().stream().map(RawFile::original).collect(Collectors.joining(", "));
    }
}

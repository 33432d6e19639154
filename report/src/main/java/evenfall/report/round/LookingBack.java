package evenfall.report.round;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.words.Words;
import evenfall.report.html.SessionPage;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LandingNote;
import evenfall.report.log.NoteEntry;
import evenfall.report.log.Now;
import evenfall.report.log.RangeNote;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.log.TrainingLog;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.SessionBackground;
import evenfall.report.session.Session;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Sessions that are over: looked back on, noted, opened as a page, found again. For the front thread. */
public final class LookingBack {

    private static final Words WORDS = Words.beside(LookingBack.class);
    private static final String PAGE = "session.html";

    private final Errands errands;
    private final Surroundings surroundings;
    private @Nullable LookBack shown;
    private @Nullable Person person;
    private @Nullable AthleteFolder athlete;

    LookingBack(Errands errands, Surroundings surroundings) {
        this.errands = errands;
        this.surroundings = surroundings;
    }

    /** What is looked back on, or null while it is being read or where there is nothing. */
    public @Nullable LookBack shown() {
        return shown;
    }

    void open(Person whose, AthleteFolder folder) {
        person = whose;
        athlete = folder;
        shown = null;
        errands.fetch(
                () -> {
                    List<SessionDate> dates = newestFirst(folder);
                    return dates.isEmpty()
                            ? Optional.<LookBack>empty()
                            : Optional.of(read(whose, folder, dates.get(0)));
                },
                this::show);
    }

    /** Another session of the same athlete. */
    public void open(SessionDate date) {
        Person whose = person;
        AthleteFolder folder = athlete;
        if (whose != null && folder != null) {
            errands.fetch(() -> Optional.of(read(whose, folder, date)), this::show);
        }
    }

    /** Leaves a landing out, or lets it count again where there is no reason. */
    public void leaveOut(LookBack.Row row, boolean out) {
        LookBack now = shown;
        AthleteFolder folder = athlete;
        if (now == null || folder == null) {
            return;
        }
        String why = out ? WORDS.say("left.out") : "";
        LandingNote note = new LandingNote(null, null, null, null, why, null);
        NoteEntry entry = new NoteEntry(Now.text(), "window", List.of(new RangeNote(row.index(), row.index(), note)));
        errands.fetch(
                () -> {
                    folder.locked(errands::tell, () -> folder.notes(now.date()).add(entry));
                    return Optional.of(read(now.person(), folder, now.date()));
                },
                this::show);
    }

    /** Writes the session's page and has it shown. */
    public void openPage() {
        LookBack now = shown;
        AthleteFolder folder = athlete;
        if (now != null && folder != null) {
            errands.fetch(() -> page(folder, now.date()), page -> surroundings.browse(page.toUri()));
        }
    }

    private void show(Optional<LookBack> read) {
        shown = read.orElse(null);
    }

    private LookBack read(Person whose, AthleteFolder folder, SessionDate date) throws IOException {
        Session session = new LoggedSessions(folder, Progress.NONE, errands::tell).withTraces(date);
        return LookBack.of(whose, date, newestFirst(folder), session);
    }

    private Path page(AthleteFolder folder, SessionDate date) throws IOException {
        LoggedSessions sessions = new LoggedSessions(folder, Progress.NONE, errands::tell);
        Session session = sessions.withTraces(date);
        StringBuilder text = new StringBuilder();
        SessionPage.write(session, SessionBackground.of(folder, date, sessions.diary(), errands::tell), text);
        SessionFolder kept = folder.session(date);
        kept.storeResult(PAGE, text.toString());
        return kept.resultFile(PAGE);
    }

    private static List<SessionDate> newestFirst(AthleteFolder folder) throws IOException {
        List<SessionDate> dates = new ArrayList<>(folder.sessions());
        Collections.reverse(dates);
        return dates;
    }

    /** Analyses sessions that have no results: those that were cut short. */
    void recover(TrainingLog log, Consumer<String> found) {
        errands.fetch(() -> cutShort(log), sentences -> sentences.forEach(found));
    }

    private List<String> cutShort(TrainingLog log) throws IOException {
        List<String> sentences = new ArrayList<>();
        for (String id : log.athletes()) {
            AthleteFolder folder = log.athlete(id);
            LoggedSessions sessions = new LoggedSessions(folder, Progress.NONE, sentence -> {});
            for (SessionDate date : folder.sessions()) {
                SessionFolder session = folder.session(date);
                boolean waits = session.result(LoggedSessions.DOCUMENT).isEmpty()
                        && !KeptRecording.files(session.rawFolder()).isEmpty()
                        && !KeptRecording.beingWritten(session.rawFolder());
                if (waits) {
                    int count = sessions.summary(date).count();
                    sentences.add(WORDS.say("recovered", id, date.toString(), count));
                }
            }
        }
        return sentences;
    }
}

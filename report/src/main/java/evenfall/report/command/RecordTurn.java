package evenfall.report.command;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.LentPort;
import evenfall.ingest.serial.Link;
import evenfall.report.coaching.Talk;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.form.FormJudge;
import evenfall.report.form.FormLimits;
import evenfall.report.live.DiskReport;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.RecordingNews;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LiveStore;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.result.EarlierLandings;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.ToldResults;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.speech.Speech;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** One athlete's turn with the sensors: a session of its own, recorded, and analysed when it is over. */
final class RecordTurn {

    private final Console console;
    private final AthleteFolder athlete;
    private final SessionFolder session;
    private final LiveLandings live = new LiveLandings(new FormJudge(FormLimits.STARTING));
    private final SessionVoice voice;
    private boolean written = true;
    private Optional<Recording> recorded = Optional.empty();

    /** A turn that begins: its session is in the log. */
    RecordTurn(Console console, AthleteFolder athlete, TalkChoice choice, Speech speech) throws IOException {
        this.console = console;
        this.athlete = athlete;
        Consent.remind(athlete, console);
        EarlierLandings earlier = EarlierLandings.of(athlete);
        this.session = athlete.locked(console::say, () -> begin(athlete));
        this.voice = new SessionVoice(console, speech, new Talk(choice, FormLimits.STARTING, earlier));
    }

    /** What the athlete heard, and hears. */
    SessionVoice voice() {
        return voice;
    }

    /** Whether all that came could be written. */
    boolean written() {
        return written;
    }

    /** Records until the end of the turn; gives the athlete whose turn it is next, if any. */
    Optional<AthleteFolder> record(
            List<Link> links, double seconds, OutputFormat format, CoachDesk desk, EndOnSignal signal)
            throws IOException, InterruptedException {
        DiskReport disk = new DiskReport(athlete.folder());
        disk.before().ifPresent(console::say);
        Optional<AthleteFolder> next;
        try (WireRecorder recorder = new WireRecorder(
                session.rawFolder(),
                links.stream().map(LentPort::new).toList(),
                Clock.system(ZoneId.systemDefault()))) {
            signal.tell(recorder::end);
            console.say("Recording " + athlete.id() + " into " + session.folder() + "; "
                    + (Double.isInfinite(seconds) ? "Ctrl-C ends." : "it ends by itself."));
            next = new RecordLoop(
                            console,
                            recorder,
                            new RecordingNews(recorder, links, disk),
                            live,
                            new NewsPrinter(console, format),
                            voice)
                    .run(seconds, desk, signal);
            recorded = recorder.whole();
            written = recorder.failure().isEmpty();
        }
        return next;
    }

    /** Takes the session away again if nothing came into it; says whether that was so. */
    boolean removeIfNothingCame() throws IOException {
        return LiveStore.removeIfNothingCame(session, KeptRecording.files(session.rawFolder()));
    }

    /**
     * Analyses the whole and stores it.
     *
     * @param aloud where the summary at the end is spoken, if it is wished for
     */
    void store(Progress progress, Speech aloud) throws IOException {
        athlete.locked(console::say, () -> {
            LoggedSessions sessions = new LoggedSessions(athlete, progress, console::say);
            Session whole = recorded.isPresent()
                    ? sessions.recorded(session.date(), recorded.get())
                    : sessions.summary(session.date());
            ToldResults.store(session, live, whole).forEach(console::say);
            console.say(RecordLoop.landings(whole) + " of " + athlete.id() + " on " + session.date() + " stored in "
                    + session.folder() + ".");
            if (voice.choice() == TalkChoice.END) {
                String summary = SessionSentence.of(whole);
                console.say(summary);
                aloud.say(summary);
            }
            return session.date();
        });
    }

    private static SessionFolder begin(AthleteFolder athlete) throws IOException {
        SessionDate date = new SessionDate(LocalDate.now(ZoneId.systemDefault()), 0);
        while (athlete.session(date).exists()) {
            date = date.next();
        }
        SessionFolder session = athlete.session(date);
        LiveStore.begin(session, ProgramVersion.PROGRAM + " " + ProgramVersion.version(), Now.text());
        return session;
    }
}

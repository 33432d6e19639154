package evenfall.report.turn;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.recorder.DiskFullException;
import evenfall.ingest.recorder.KeptRecording;
import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.recording.Recording;
import evenfall.ingest.serial.LentPort;
import evenfall.ingest.serial.Link;
import evenfall.ingest.words.Words;
import evenfall.report.coaching.Talk;
import evenfall.report.coaching.TalkChoice;
import evenfall.report.deciding.Rules;
import evenfall.report.live.DiskReport;
import evenfall.report.live.LiveLandings;
import evenfall.report.live.RecordingNews;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.LiveStore;
import evenfall.report.log.Now;
import evenfall.report.log.SessionDate;
import evenfall.report.log.SessionFolder;
import evenfall.report.result.EarlierLandings;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.ToldResults;
import evenfall.report.sentence.SessionSentence;
import evenfall.report.session.ProgramVersion;
import evenfall.report.session.Session;
import evenfall.report.speech.Speech;
import evenfall.report.turn.Onlooker.Topic;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** One athlete's turn with the sensors: a session of its own, recorded, and analysed when it is over. */
public final class Turn {

    private static final Words WORDS = Words.beside(Turn.class);

    private final Clock clock;
    private final Onlooker onlooker;
    private final Consumer<String> tell;
    private final AthleteFolder athlete;
    private final SessionFolder session;
    private final LiveLandings live;
    private final TurnVoice voice;
    private boolean written = true;
    private Optional<Recording> recorded = Optional.empty();

    /** A turn that begins now: its session is in the log. */
    public Turn(Onlooker onlooker, AthleteFolder athlete, TalkChoice choice, Speech speech) throws IOException {
        this(onlooker, athlete, choice, speech, Clock.system(ZoneId.systemDefault()));
    }

    /** A turn that begins when {@code clock} says. */
    public Turn(Onlooker onlooker, AthleteFolder athlete, TalkChoice choice, Speech speech, Clock clock)
            throws IOException {
        this.clock = clock;
        this.onlooker = onlooker;
        this.tell = sentence -> onlooker.told(Topic.RECORDING, sentence);
        this.athlete = athlete;
        EarlierLandings earlier = EarlierLandings.of(athlete, tell);
        this.live = new LiveLandings(earlier::standard);
        this.session = athlete.locked(tell, () -> begin(athlete, clock));
        this.voice = new TurnVoice(onlooker, speech, new Talk(choice, earlier::standard, earlier));
    }

    /** What the athlete heard, and hears. */
    public TurnVoice voice() {
        return voice;
    }

    /** Whose turn it is. */
    public AthleteFolder athlete() {
        return athlete;
    }

    /** Where it is kept. */
    public SessionFolder session() {
        return session;
    }

    /** Whether all that came could be written. */
    public boolean written() {
        return written;
    }

    /** Records until whoever leads ends the turn. */
    public void record(List<Link> links, Leader leader) throws IOException, InterruptedException {
        DiskReport disk = new DiskReport(athlete.folder());
        look(disk);
        try (WireRecorder recorder = new WireRecorder(
                        session.rawFolder(), links.stream().map(LentPort::new).toList(), clock);
                Warming warming = new Warming(athlete, session)) {
            leader.begins(recorder::end);
            new TurnLoop(
                            onlooker,
                            recorder,
                            new RecordingNews(recorder, links, disk),
                            live,
                            voice,
                            new LandingCap(Rules.of(athlete, tell).cap()),
                            warming)
                    .run(leader);
            recorded = recorder.whole();
            written = recorder.failure().isEmpty();
        }
    }

    private void look(DiskReport disk) throws IOException {
        try {
            disk.before().ifPresent(tell);
        } catch (DiskFullException e) {
            removeIfNothingCame();
            throw e;
        }
    }

    /** Takes the session away again if nothing came into it; says whether that was so. */
    public boolean removeIfNothingCame() throws IOException {
        return LiveStore.removeIfNothingCame(session, KeptRecording.files(session.rawFolder()));
    }

    /**
     * Analyses the whole and stores it.
     *
     * @param aloud where the summary at the end is spoken, if it is wished for
     * @return the session
     */
    public Session store(Progress progress, Speech aloud) throws IOException {
        return athlete.locked(tell, () -> {
            LoggedSessions sessions = new LoggedSessions(athlete, progress, tell);
            boolean now = recorded.isPresent();
            Session whole = now ? sessions.recorded(session.date(), recorded.get()) : sessions.summary(session.date());
            ToldResults.store(session, live, whole, tell).forEach(sentence -> onlooker.told(Topic.STORED, sentence));
            if (now) {
                KeptPage.write(athlete, session, whole, sessions.diary(), tell)
                        .ifPresent(page -> onlooker.told(Topic.STORED, page));
            }
            onlooker.told(
                    Topic.STORED, WORDS.say("stored", whole.count(), athlete.id(), session.date(), session.folder()));
            if (voice.choice() == TalkChoice.END) {
                String summary = SessionSentence.of(whole);
                onlooker.told(Topic.STORED, summary);
                aloud.say(summary);
            }
            if (now) {
                sessions.keepSignals(session.date(), whole);
            }
            return whole;
        });
    }

    private static SessionFolder begin(AthleteFolder athlete, Clock clock) throws IOException {
        SessionDate date = new SessionDate(LocalDate.now(clock), 0);
        while (athlete.session(date).exists()) {
            date = date.next();
        }
        SessionFolder session = athlete.session(date);
        LiveStore.begin(session, ProgramVersion.PROGRAM + " " + ProgramVersion.version(), Now.text());
        return session;
    }
}

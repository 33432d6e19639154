package evenfall.report.result;

import evenfall.ingest.progress.Progress;
import evenfall.ingest.words.Words;
import evenfall.report.form.FormStandard;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionDate;
import evenfall.report.session.SessionLanding;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * An athlete's landings of earlier sessions, oldest first: read in the background from stored results of this version, nothing
 * is made again for them. Until they are read, and where they cannot be, there are none.
 */
public final class EarlierLandings implements Supplier<List<SessionLanding>> {

    private static final Words WORDS = Words.beside(EarlierLandings.class);

    private volatile List<SessionLanding> landings = List.of();
    private volatile FormStandard standard = FormStandard.STARTING;

    private EarlierLandings() {}

    /**
     * The landings of an athlete's sessions that are in the log now.
     *
     * @param tell told in a sentence of settings that cannot be understood
     */
    public static EarlierLandings of(AthleteFolder athlete, Consumer<String> tell) throws IOException {
        EarlierLandings earlier = new EarlierLandings();
        List<SessionDate> dates = athlete.sessions();
        Thread thread = new Thread(() -> earlier.read(athlete, dates, tell), "earlier landings");
        thread.setDaemon(true);
        thread.start();
        return earlier;
    }

    @Override
    public List<SessionLanding> get() {
        return landings;
    }

    /** What the athlete is judged by; where a coach starts until the log is read. */
    public FormStandard standard() {
        return standard;
    }

    private void read(AthleteFolder athlete, List<SessionDate> dates, Consumer<String> tell) {
        try {
            standard = new LoggedSessions(athlete, Progress.NONE, tell).standard(false);
        } catch (IOException e) {
            tell.accept(WORDS.say("usual.unread", athlete.id(), String.valueOf(e.getMessage())));
        }
        landings = StoredSessions.newest(athlete, dates).stream()
                .flatMap(session -> session.landings().stream())
                .toList();
    }
}

package evenfall.report.turn;

import evenfall.ingest.words.Words;
import evenfall.report.html.SessionPage;
import evenfall.report.log.AthleteFolder;
import evenfall.report.log.SessionFolder;
import evenfall.report.result.LoggedDiary;
import evenfall.report.result.LoggedSessions;
import evenfall.report.result.SessionBackground;
import evenfall.report.session.Background;
import evenfall.report.session.Session;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** The page of a session as it stands when its recording is over, kept beside the results: it is there at once. */
final class KeptPage {

    private static final Words WORDS = Words.beside(KeptPage.class);

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);

    private KeptPage() {}

    /**
     * Draws and keeps it; the caller holds the athlete's lock.
     *
     * @param whole with traces
     * @param diary the athlete's
     * @param tell told, in a sentence, why there is none: a full disk must not keep anybody from the results
     * @return where it is, in a sentence
     */
    static Optional<String> write(
            AthleteFolder athlete, SessionFolder session, Session whole, LoggedDiary diary, Consumer<String> tell) {
        try {
            Background background = SessionBackground.of(athlete, session.date(), diary, sentence -> {})
                    .keptAt(LocalDateTime.now(ZoneId.systemDefault()).format(WHEN));
            Session named = whole.named(athlete.calledName(sentence -> {}));
            session.storeResult(LoggedSessions.PAGE, out -> {
                Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                SessionPage.write(named, background, text);
                text.flush();
            });
            return Optional.of(WORDS.say("page", session.resultFile(LoggedSessions.PAGE)));
        } catch (IOException e) {
            tell.accept(WORDS.say("page.none", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }
}

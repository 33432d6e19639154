package evenfall.report.command;

import evenfall.ingest.words.Words;
import evenfall.report.json.LandingsDocument;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.session.SessionLanding;
import evenfall.report.table.SessionText;
import evenfall.report.turn.Onlooker;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Prints landings as they come, a line each, and says what a person should know. */
final class ConsoleOnlooker implements Onlooker {

    private static final Words WORDS = Words.beside(ConsoleOnlooker.class);

    private final Console console;
    private final OutputFormat format;

    private @Nullable IOException failure;

    ConsoleOnlooker(Console console, OutputFormat format) {
        this.console = console;
        this.format = format;
    }

    @Override
    public void told(Topic topic, String sentence) {
        console.say(sentence);
    }

    @Override
    public void came(News news) {
        for (double fall : news.falls()) {
            console.say(WORDS.say("fall", String.format(Locale.ROOT, "%.1f", fall)));
        }
        for (SessionLanding landing : news.landings()) {
            String line = format == OutputFormat.JSON ? LandingsDocument.line(landing) : SessionText.line(landing);
            show(line);
        }
    }

    /** Whether every landing could be shown to whoever reads them, if anybody still does. */
    boolean shown() {
        return failure == null || failure instanceof OutputClosedException;
    }

    /** Nobody may read on, and the recording is worth more than its print. */
    private void show(String line) {
        if (failure != null) {
            return;
        }
        try {
            OutputStream out = console.results();
            out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (IOException e) {
            failure = e;
            console.say(
                    e instanceof OutputClosedException
                            ? WORDS.say("output.closed")
                            : WORDS.say("output.lost", String.valueOf(e.getMessage())));
        }
    }
}

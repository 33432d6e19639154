package evenfall.report.command;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.fusion.event.EventKind;
import evenfall.fusion.landing.Landing;
import evenfall.fusion.landing.Moments;
import evenfall.ingest.progress.Progress;
import evenfall.report.live.LiveLandings.News;
import evenfall.report.log.LandingNote;
import evenfall.report.session.SessionLanding;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A landing is one line; one that cannot be printed must not end the recording it is from. */
class ConsoleOnlookerTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void eachLandingIsALine() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ConsoleOnlooker onlooker = onlooker(out, "");

        onlooker.came(news());
        onlooker.came(news());

        assertThat(out.toString(StandardCharsets.UTF_8).lines()).hasSize(2).allMatch(line -> line.startsWith("{"));
        assertThat(onlooker.shown()).isTrue();
        assertThat(err.size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "Broken pipe, Nobody reads the landings any more, true",
        "No space left on device, The landings cannot be printed any more (standard output: No space left on device), false"
    })
    void anOutputThatFailsIsToldOnceAndTheRecordingGoesOn(String why, String sentence, boolean shown) {
        OutputStream failing = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
        ConsoleOnlooker onlooker = onlooker(failing, why);

        onlooker.came(news());
        onlooker.came(news());

        assertThat(err.toString(StandardCharsets.UTF_8).lines())
                .singleElement()
                .asString()
                .startsWith(sentence)
                .contains("the recording goes on");
        assertThat(onlooker.shown()).isEqualTo(shown);
    }

    private ConsoleOnlooker onlooker(OutputStream out, String why) {
        Console console = new Console(
                new StandardLines(InputStream.nullInputStream(), () -> true),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Progress.NONE,
                () -> new IOException(why));
        return new ConsoleOnlooker(console, OutputFormat.JSON);
    }

    private static News news() {
        Moments moments = new Moments(59.6, 60.0, 60.04, 60.2, 61.0);
        Landing landing = new Landing(1, EventKind.LANDING, moments, null, null, Set.of());
        return new News(List.of(new SessionLanding(landing, null, null, LandingNote.NONE)), List.of());
    }
}

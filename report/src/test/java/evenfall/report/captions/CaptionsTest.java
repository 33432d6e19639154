package evenfall.report.captions;

import static org.assertj.core.api.Assertions.assertThat;

import evenfall.report.film.FilmClock;
import evenfall.report.session.InventedSessions;
import evenfall.report.session.Session;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The grammar of WebVTT as the W3C states it: file header, blank line, then notes and cues parted by blank lines. */
class CaptionsTest {

    private static final Pattern TIMING =
            Pattern.compile("(\\d{2,}):(\\d\\d):(\\d\\d)\\.(\\d{3}) --> (\\d{2,}):(\\d\\d):(\\d\\d)\\.(\\d{3})");

    @ParameterizedTest
    @CsvSource({"3723.4567, 01:02:03.457", "0, 00:00:00.000", "59.9996, 00:01:00.000", "360000, 100:00:00.000"})
    void aTime_hasHoursMinutesSecondsAndThousandths(double seconds, String text) {
        assertThat(Captions.time(seconds)).isEqualTo(text);
    }

    @Test
    void markupAndTimes_neverStandInText() {
        assertThat(Captions.escaped("a <b> & c --> d\n\ne")).isEqualTo("a &lt;b&gt; &amp; c --&gt; d e");
    }

    @Test
    void aTrack_followsTheGrammar_andItsCuesFollowOneAnother() throws IOException {
        Session session = InventedSessions.of(6, 20);
        String text = track(session, 0);
        List<String> blocks = List.of(text.split("\n\n", -1));

        assertThat(blocks.get(0)).isEqualTo("WEBVTT");
        assertThat(blocks.get(1)).startsWith("NOTE ").contains("Pain means stop");
        assertThat(blocks).hasSize(8);
        double before = -1;
        for (String block : blocks.subList(2, 8)) {
            String[] lines = block.strip().split("\n", -1);
            Matcher timing = TIMING.matcher(lines[1]);
            assertThat(timing.matches()).as(lines[1]).isTrue();
            double from = seconds(timing, 1);
            assertThat(from).isGreaterThan(before).isLessThan(seconds(timing, 5));
            assertThat(lines[2]).startsWith("Landing " + lines[0]);
            before = from;
        }
    }

    @Test
    void aFilmThatBeginsLater_showsTheRestEarlier() throws IOException {
        Session session = InventedSessions.of(6, 20);
        double contact = session.landings().get(2).landing().moments().contactS();
        String text = track(session, contact - 1.5);

        assertThat(text).contains("00:00:01.500 -->").doesNotContain("\n2\n");
    }

    private static double seconds(Matcher m, int g) {
        return 3600.0 * Integer.parseInt(m.group(g))
                + 60.0 * Integer.parseInt(m.group(g + 1))
                + Integer.parseInt(m.group(g + 2))
                + Integer.parseInt(m.group(g + 3)) / 1000.0;
    }

    private static String track(Session session, double filmStartsS) throws IOException {
        StringBuilder text = new StringBuilder();
        Captions.write(session, new FilmClock(filmStartsS, 0), text);
        return text.toString();
    }
}

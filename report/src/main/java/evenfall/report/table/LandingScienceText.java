package evenfall.report.table;

import evenfall.ingest.words.Words;
import evenfall.report.session.LandingScience;
import evenfall.report.session.Session;
import evenfall.report.session.SessionLanding;
import evenfall.report.words.Figures;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** The scientist's table of a session: what passed up the spine, and how long it took to come to rest. */
public final class LandingScienceText {

    private static final Words WORDS = Words.beside(LandingScienceText.class);

    private LandingScienceText() {}

    /** Writes it; the session has its traces. */
    public static void write(Session session, Appendable out) throws IOException {
        out.append('\n').append(WORDS.say("science.landings")).append('\n');
        TextGrid grid = new TextGrid();
        grid.row(
                WORDS.say("science.landing"),
                WORDS.say("science.attenuation"),
                WORDS.say("science.transfer"),
                WORDS.say("science.steady"),
                WORDS.say("science.mean"));
        for (SessionLanding landing : session.landings()) {
            LandingScience science = LandingScience.of(landing);
            grid.row(
                    String.valueOf(landing.landing().index()),
                    figure(science.attenuation(), 0),
                    figure(science.transfer(), 1),
                    figure(science.steadyS(), 2),
                    figure(science.meanSteadyS(), 2));
        }
        grid.write(out);
        out.append(WORDS.say("science.landings.note")).append('\n');
    }

    private static String figure(@Nullable Double value, int decimals) {
        return value == null ? Cells.MISSING : Figures.fixed(value, decimals);
    }
}

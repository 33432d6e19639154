package evenfall.report.command;

import evenfall.ingest.recorder.WireRecorder;
import evenfall.ingest.words.Words;
import evenfall.report.log.AthleteFolder;
import evenfall.report.turn.TurnVoice;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes what a coach types while sessions are recorded, one after another. */
final class CoachDesk {

    private static final Words WORDS = Words.beside(CoachDesk.class);

    private final Console console;
    private final StandardLines lines;
    private final LogOptions log;
    private @Nullable String doubtful;
    private boolean end;

    CoachDesk(Console console, LogOptions log) {
        this.console = console;
        this.lines = console.lines();
        this.log = log;
    }

    /** Whether a line asked for the end. */
    boolean endWanted() {
        return end;
    }

    /** Does what was asked for since the last look; gives the athlete the sensors go to, if any. */
    Optional<AthleteFolder> look(TurnVoice voice, WireRecorder recorder) throws IOException {
        for (Optional<String> line = lines.next(); line.isPresent() && !end; line = lines.next()) {
            CoachOrder order = CoachOrder.of(line.get());
            if (order instanceof CoachOrder.HandOver to) {
                Optional<AthleteFolder> next = known(to.athlete());
                if (next.isPresent()) {
                    return next;
                }
                continue;
            }
            doubtful = null;
            if (order instanceof CoachOrder.Help) {
                console.say(CoachOrder.LINES);
            } else if (order instanceof CoachOrder.End) {
                end = true;
            } else if (order instanceof CoachOrder.GoOn) {
                voice.goOn();
            } else if (order instanceof CoachOrder.Choose choose) {
                voice.choose(choose.choice());
            } else if (order instanceof CoachOrder.Worn worn) {
                voice.worn(worn.sensor(), worn.place(), recorder);
            } else {
                console.say(WORDS.say("desk.unknown", line.get(), CoachOrder.LINES));
            }
        }
        return Optional.empty();
    }

    /** A name that is not in the log is asked for twice: a slip of the finger should make nobody. */
    private Optional<AthleteFolder> known(String name) throws IOException {
        AthleteFolder athlete = log.find(name);
        boolean certain = athlete.exists() || name.equals(doubtful);
        doubtful = certain ? null : name;
        if (!certain) {
            console.say(WORDS.say("desk.nobody", name));
            return Optional.empty();
        }
        return Optional.of(athlete);
    }
}
